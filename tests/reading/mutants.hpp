// Files that differ from a good one in one thing, for comparing two judges of the same rules.
#pragma once

#include <algorithm>
#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/terms.hpp"
#include "xml/xml.hpp"

namespace reading_test {

inline std::string escaped(const std::string& text)
{
    std::string out;
    for (const char c : text) {
        if (c == '&') out += "&amp;";
        else if (c == '<') out += "&lt;";
        else if (c == '"') out += "&quot;";
        else out += c;
    }
    return out;
}

inline std::string to_text(const shaftcut::XmlElement& element)
{
    std::string out = "<" + element.name;
    for (const auto& attribute : element.attributes) out += " " + attribute.name + "=\"" + escaped(attribute.value) + "\"";
    out += ">" + escaped(element.text);
    for (const auto& child : element.children) out += to_text(child);
    return out + "</" + element.name + ">";
}

template <class E>
void add_words(std::vector<std::string>& values)
{
    for (const char* word : shaftcut::Words<E>::all) values.emplace_back(word);
}

// What is put in the place of every attribute's value in turn: numbers in and out of range, lengths in every form, and
// every word of the trade.
inline std::vector<std::string> values_to_try()
{
    using namespace shaftcut;
    std::vector<std::string> values{
        "",        " ",          "x",          "-1",        "0",          "0.0",        "1",        "1.5",         "181",           "180",
        "101",     "742 mm",     "742mm",      "742  mm",   "742 cm",     "3/16",       "3/2",      "29-3/16 in",  "29-16/16 in",   "3/0 in",
        "1e3",     "nan",        "5 ",         " 5",        "100000",     "100000.1",   "10000",    "10001",       "0.0001",        "0/5 in",
        "1949",    "1950",       "2100",       "2101",      "2026-02-30", "2026-02-28", "0000-01-01", "2026-2-8", " 2026-02-28",   "2026-02-28Z",
        ".x",      "-x",         "K_1.2",      "aux.1",      "a/b",       "coated coated", "coated end-stop", "540 1000", "Alder 2", "1-3/8-6",  "1-3/8-21", "EUX",
        "Zeppelin", "0.1234567", "0.123456",   "+5",        "7,5",        "in",         "mm",       "outer cross", "forbidden",    "Forbidden",
        "tractor_lock", "left-out", "day-first", "0.0005", "0.0004", "1000.1", "89.9995", "89.999", "no", "1 mm", "26 mm", "25 mm", "a\u202Eb", "\u200B", "\uFE0F", "a\U000E0041",
        std::string(40, 'a'), std::string(41, 'a'), std::string(60, 'a'), std::string(61, 'a'), std::string(200, 'a'), std::string(201, 'a')};
    add_words<End>(values), add_words<Tube>(values), add_words<JointKind>(values), add_words<Reference>(values);
    add_words<Range>(values), add_words<Role>(values), add_words<Between>(values), add_words<Shape>(values);
    add_words<Lock>(values), add_words<Device>(values), add_words<Feature>(values), add_words<PartKind>(values);
    add_words<Completeness>(values), add_words<CrossWear>(values), add_words<TubeState>(values), add_words<LockState>(values);
    add_words<Weld>(values), add_words<DeviceState>(values), add_words<Phase>(values), add_words<Slides>(values), add_words<GuardUse>(values);
    return values;
}

// Calls `visit` after every single change to the tree under `root`, and takes the change back.
class Mutator {
public:
    Mutator(shaftcut::XmlElement root, std::function<void(const shaftcut::XmlElement& root)> visit)
        : root_(std::move(root)), visit_(std::move(visit)) {}

    void run() { mutate(root_); }

private:
    void mutate(shaftcut::XmlElement& element)
    {
        mutate_attributes(element);
        mutate_content(element);
        for (std::size_t i = 0; i < element.children.size(); ++i) mutate_child(element, i);
        for (std::size_t i = 0; i < element.children.size(); ++i) mutate(element.children[i]);
    }

    void changed(shaftcut::XmlElement& element, const std::function<void(shaftcut::XmlElement&)>& change)
    {
        const shaftcut::XmlElement before = element;
        change(element);
        visit_(root_);
        element = before;
    }

    void mutate_attributes(shaftcut::XmlElement& element)
    {
        for (std::size_t i = 0; i < element.attributes.size(); ++i) {
            changed(element, [i](auto& e) { e.attributes.erase(e.attributes.begin() + static_cast<std::ptrdiff_t>(i)); });
            changed(element, [i](auto& e) { e.attributes[i].name += "-x"; });
            for (const std::string& value : values_to_try()) changed(element, [&](auto& e) { e.attributes[i].value = value; });
        }
    }

    void mutate_content(shaftcut::XmlElement& element)
    {
        changed(element, [](auto& e) { e.text += " 5 "; });
        changed(element, [](auto& e) { e.text = "590 480"; });
        changed(element, [](auto& e) { e.text = "480 29-3/16in 800.5mm 100001"; });
        for (const auto& [name, value] : {std::pair("unheard-of", "1"), std::pair("shape", "lemon"), std::pair("spacing", "64"), std::pair("length", "5"),
                                          std::pair("plus-minus", "1"), std::pair("reference", "outer-cross"), std::pair("name", "x"), std::pair("shoulder", "60"), std::pair("stop-depth", "500"), std::pair("stands-out", "18"), std::pair("plan", "5"), std::pair("cross-to-groove", "60"),
                                          std::pair("other-tractors", "none"), std::pair("guard", "complete")})
            changed(element, [&](auto& e) { e.attributes.push_back({name, value, {}}); });
        changed(element, [](auto& e) { e.children.push_back({"unheard-of", {}, {}, {}, {}, {}}); });
        changed(element, [](auto& e) { e.name += "s"; });
        changed(element, [](auto& e) { std::reverse(e.children.begin(), e.children.end()); });
    }

    void mutate_child(shaftcut::XmlElement& element, std::size_t i)
    {
        changed(element, [i](auto& e) { e.children.erase(e.children.begin() + static_cast<std::ptrdiff_t>(i)); });
        changed(element, [i](auto& e) {
            const shaftcut::XmlElement copy = e.children[i];
            e.children.push_back(copy);
        });
    }

    shaftcut::XmlElement root_;
    std::function<void(const shaftcut::XmlElement&)> visit_;
};

}  // namespace reading_test
