#include "support/changed_job.hpp"

#include <pugixml.hpp>
#include <sstream>
#include <stdexcept>

namespace shaftcut::test {
namespace {

// "half[2]": the second of its parent's children of this name, made with those before it where there are fewer.
pugi::xml_node child(pugi::xml_node parent, const std::string& step)
{
    const std::size_t bracket = step.find('[');
    const std::string name = step.substr(0, bracket);
    int left = bracket == std::string::npos ? 1 : std::stoi(step.substr(bracket + 1));
    for (pugi::xml_node each : parent.children(name.c_str()))
        if (--left == 0) return each;
    while (--left > 0) parent.append_child(name.c_str());
    return parent.append_child(name.c_str());
}

void put(pugi::xml_node root, const Change& change)
{
    const std::size_t at = change.path.find('@');
    if (at == std::string::npos) throw std::logic_error("a change of no attribute: " + change.path);
    pugi::xml_node node = root;
    std::istringstream steps(change.path.substr(0, at));
    for (std::string step; std::getline(steps, step, '/');) node = child(node, step);
    const std::string attribute = change.path.substr(at + 1);
    node.remove_attribute(attribute.c_str());
    if (change.value) node.append_attribute(attribute.c_str()) = change.value->c_str();
}

}  // namespace

std::string changed(const std::string& xml, const Changes& changes)
{
    pugi::xml_document document;
    if (!document.load_string(xml.c_str())) throw std::logic_error("no XML");
    for (const Change& change : changes) put(document.document_element(), change);
    std::ostringstream out;
    document.save(out);
    return out.str();
}

}  // namespace shaftcut::test
