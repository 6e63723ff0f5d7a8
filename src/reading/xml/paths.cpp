#include "xml/paths.hpp"

#include <string_view>
#include <unordered_map>

#include "text.hpp"

namespace shaftcut {
namespace {

// One pass over the whole file, whatever the spots.
class Walk {
public:
    explicit Walk(const std::set<Spot>& spots) : spots_(spots) {}

    std::map<Spot, std::string> run(const XmlElement& root)
    {
        visit(root, "");
        return std::move(found_);
    }

private:
    void visit(const XmlElement& element, const std::string& path)
    {
        if (spots_.count(element.spot) > 0) found_[element.spot] = path;
        for (const XmlAttribute& attribute : element.attributes)
            if (spots_.count(attribute.spot) > 0) found_[attribute.spot] = path + attribute_path(attribute.name);
        std::unordered_map<std::string_view, std::size_t> count, number;
        for (const XmlElement& child : element.children) ++count[child.name];
        for (const XmlElement& child : element.children) {
            const std::string which = count[child.name] > 1 ? "[" + std::to_string(++number[child.name]) + "]" : "";
            visit(child, path + (path.empty() ? "" : "/") + printable(child.name) + which);
        }
    }

    const std::set<Spot>& spots_;
    std::map<Spot, std::string> found_;
};

}  // namespace

std::string attribute_path(const std::string& attribute) { return "@" + printable(attribute); }

std::map<Spot, std::string> paths_of(const XmlElement& root, const std::set<Spot>& spots) { return Walk(spots).run(root); }

}  // namespace shaftcut
