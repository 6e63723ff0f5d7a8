#include "support/identify/reference_files.hpp"

#include <pugixml.hpp>

#include <sstream>
#include <stdexcept>

namespace shaftcut::test {
namespace {

std::optional<Length> length(pugi::xml_attribute attribute)
{
    if (!attribute) return std::nullopt;
    return Length::from_mm(attribute.as_double());
}

template <class Word>
std::optional<Word> word(pugi::xml_attribute attribute)
{
    if (!attribute) return std::nullopt;
    const auto found = from_word<Word>(attribute.value());
    if (!found) throw std::runtime_error(attribute.value());
    return found;
}

pugi::xml_document loaded(const std::string& path)
{
    pugi::xml_document document;
    if (!document.load_file(path.c_str())) throw std::runtime_error(path);
    return document;
}

Cross cross_of(pugi::xml_node node)
{
    Cross cross;
    cross.cap = length(node.attribute("cap")).value();
    cross.span = length(node.attribute("span")).value();
    cross.other_cap = length(node.attribute("other-cap"));
    cross.other_span = length(node.attribute("other-span"));
    cross.circlip = word<Circlip>(node.attribute("circlip"));
    cross.nipple = word<Nipple>(node.attribute("nipple"));
    return cross;
}

Series series_of(pugi::xml_node node)
{
    Series series;
    series.name = node.attribute("name").value();
    series.shape = word<Shape>(node.attribute("shape")).value();
    series.wide_angle_reference = word<Reference>(node.attribute("wide-angle-reference"));
    for (const auto cross : node.children("cross")) series.crosses.push_back(cross_of(cross));
    if (const auto wide = node.child("wide-angle")) {
        series.wide_angle = WideAngleJoint{length(wide.attribute("spacing")).value(), {}};
        for (const auto cross : wide.children("cross")) series.wide_angle->crosses.push_back(cross_of(cross));
    }
    for (const auto half : node.children("half")) {
        SeriesHalf& made = series.halves[word<Tube>(half.attribute("tube")).value()];
        made.width = length(half.attribute("width"));
        made.wall = length(half.attribute("wall"));
    }
    std::istringstream closed(node.child_value("closed-lengths"));
    for (double one = 0; closed >> one;) series.closed_lengths.push_back(Length::from_mm(one));
    return series;
}

SizeReadings readings(pugi::xml_node in, const char* element, const char* attribute, CapPair pair = CapPair::first)
{
    SizeReadings all;
    for (const auto node : in.children(element)) {
        if (word<CapPair>(node.attribute("pair")).value_or(CapPair::first) != pair) continue;
        all.push_back({length(node.attribute(attribute)).value(), length(node.attribute("plus-minus")), length(node.attribute("spacers")).value_or(Length()), {}});
    }
    return all;
}

MeasuredCross measured_cross(pugi::xml_node node)
{
    MeasuredCross cross;
    cross.at = word<CrossPlace>(node.attribute("at"));
    cross.circlip = word<Circlip>(node.attribute("circlip"));
    cross.nipple = word<Nipple>(node.attribute("nipple"));
    for (const CapPair pair : {CapPair::first, CapPair::second}) {
        MeasuredPair& made = cross.pairs[pair];
        made.cap = readings(node, "cap", "diameter", pair);
        made.span = readings(node, "span", "length", pair);
        for (const auto cap : node.children("cap"))
            if (word<CapPair>(cap.attribute("pair")).value_or(CapPair::first) == pair) made.cap_read = word<CapRead>(cap.attribute("measured-in")).value_or(CapRead::cap);
    }
    return cross;
}

}  // namespace

Catalogue read_reference_catalogue(const std::string& path)
{
    Catalogue catalogue;
    const auto document = loaded(path);
    for (const auto series : document.child("catalogue").children("series")) catalogue.series.push_back(series_of(series));
    return catalogue;
}

Measures read_reference_measures(const std::string& path)
{
    Measures measures;
    const auto document = loaded(path);
    const auto root = document.child("measures");
    measures.shaft = root.attribute("shaft").value();
    for (const auto node : root.children("end")) {
        MeasuredEnd& end = measures.ends[word<End>(node.attribute("side")).value()];
        end.joint = word<JointKind>(node.attribute("joint"));
        end.spacing = readings(node, "spacing", "length");
        for (const auto cross : node.children("cross")) end.crosses.push_back(measured_cross(cross));
    }
    measures.shape = word<Shape>(root.child("tubes").attribute("shape"));
    for (const auto tube : root.child("tubes").children("tube"))
        measures.tubes.push_back({word<Tube>(tube.attribute("tube")), readings(tube, "width", "length"), readings(tube, "wall", "length")});
    if (const auto guard = root.child("guard")) measures.writing = guard.attribute("writing").value();
    if (const auto closed = root.child("closed")) {
        measures.closed.emplace();
        measures.closed->reading = readings(root, "closed", "length").front();
        measures.closed->reference = word<Reference>(closed.attribute("reference"));
    }
    return measures;
}

}  // namespace shaftcut::test
