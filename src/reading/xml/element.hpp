// How readers take an XML file apart: elements whose attributes come out through strict typed getters. Whatever a
// reader does not ask for is reported as unknown when it is done with the element; it cannot forget that, because an
// Element exists only while it is being read by the function that gets it.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "parse.hpp"
#include "shaftcut/reading/source/source.hpp"
#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/angle.hpp"
#include "shaftcut/words/length.hpp"
#include "source/faults.hpp"
#include "source/findings.hpp"
#include "source/known_names.hpp"
#include "source/read.hpp"
#include "xml/xml.hpp"

namespace shaftcut {

template <> struct Words<Units> { static constexpr std::array all{"mm", "in"}; };

// Of a customer, a machine and the like, in XML and in CSV.
inline constexpr std::size_t most_text_characters = 200;
// Of what a series, a connection, a workshop or a shaft is called, and of the position in which a length was measured.
inline constexpr std::size_t most_name_characters = 60;

inline constexpr std::int64_t most_power = 1000;  // kW, that a file may state: more than any tractor gives (the project's own choice)

// What all elements of one file share while it is read.
struct Reading {
    Faults faults;
    std::optional<Units> units;  // nothing where the file does not state them rightly
};

// An attribute that was asked for. A getter gives nothing where the attribute is missing or its value is wrong; it
// records what is wrong with the value, so that the caller has nothing to check.
class Attribute {
public:
    bool given() const { return given_ != nullptr; }
    const char* called() const { return name_; }
    // As it stands in the file; only where it is given.
    const std::string& value() const { return given_->value; }
    // Of the attribute, or of its element where it is missing.
    Place place() const;
    // Records a fault at this attribute, or at its element where it is missing.
    void fault(FaultFinding what) const;

    std::optional<Length> length(Sign sign = Sign::none) const;  // 0 or more, or below 0 too under Sign::allowed
    std::optional<Length> positive_length() const;               // more than 0
    std::optional<Length> length_within(Bounded kind) const;     // within the bounds of its kind
    std::optional<Length> plus_minus() const;                    // how far a length may be off, at most 25 mm
    std::optional<Angle> angle(Sign sign = Sign::none) const;    // 0 to 180 degrees, or -180 to 180
    std::optional<Fraction> fraction() const;       // above 0, at most 1
    std::optional<std::int64_t> thousandths(std::int64_t most) const;
    std::optional<std::int64_t> percent() const;  // thousandths
    std::optional<std::int64_t> millionths(std::int64_t most) const;
    std::optional<Money> money(const Currency& currency) const;
    std::optional<std::int64_t> power() const;      // watts, of kilowatts above 0 and at most most_power
    std::optional<int> whole(int least, int most) const;
    // One or more whole numbers with blanks between them.
    std::vector<int> wholes(int least, int most) const;
    std::optional<std::string> text(std::size_t most_characters = most_text_characters) const;
    // The same, but not all of it blanks.
    std::optional<std::string> stated_text(std::size_t most_characters = most_text_characters) const;
    // The same, of at most most_name_characters: what a series, a connection or a workshop is called.
    std::optional<std::string> name() const;
    // One of `known`; where it is not, the fault holds the nearest one.
    std::optional<std::string> one_of(const KnownNames& known) const;
    // A word of E, or words of E, each at most once, with blanks between them (none at all will do).
    template <class E> std::optional<E> word() const;
    template <class E> std::vector<E> words() const;

private:
    friend class Element;
    Attribute(const char* name, const XmlAttribute* given, Spot element, Reading* reading)
        : name_(name), given_(given), element_(element), reading_(reading) {}
    Spot spot() const { return given_ ? given_->spot : element_; }
    Stated stated() const { return {name_, given_->value}; }
    bool to_fill() const { return given_->value == "?"; }
    template <class T> std::optional<T> taken(Parsed<T> parsed) const;
    std::optional<std::size_t> index_of_word(const std::vector<std::string>& words, std::string_view text) const;

    const char* name_;
    const XmlAttribute* given_;
    Spot element_;
    Reading* reading_;
};

class Element {
public:
    using Reader = std::function<void(Element&)>;

    Element(const Element&) = delete;
    Element& operator=(const Element&) = delete;

    const std::string& name() const { return xml_.name; }
    Place place() const { return reading_.faults.place(xml_.spot); }
    Units units() const { return reading_.units.value_or(Units::mm); }
    void fault(FaultFinding what) const;
    // A fault of the element or attribute of this file that begins at this place.
    void fault_at(const Place& place, FaultFinding what) const;
    // Of the whole file: what was read without a rise is sound.
    std::size_t faults_so_far() const { return reading_.faults.count(); }

    // Asks for an attribute. One that is required and missing is a fault.
    [[nodiscard]] Attribute optional(const char* name);
    [[nodiscard]] Attribute required(const char* name);

    // An attribute or children of this name belong to another kind of file: each is a fault that says so, and nothing in it is read.
    void refuse(const char* name, const FaultFinding& why);

    // Asks for child elements, wherever among the others they stand, and has each read by `reader`. A second one where
    // there may be one is a fault, as is none where there must be one.
    void one(const char* name, const Reader& reader);
    void at_most_one(const char* name, const Reader& reader);
    void each(const char* name, const Reader& reader);
    void at_least_one(const char* name, const Reader& reader);

    // Lengths as text between the tags, each more than 0, ascending, with blanks between them; a value that carries its
    // unit has no blank before it. Each is within the bounds of its kind.
    std::vector<Length> lengths(Bounded kind);

private:
    friend FaultList read_document(const Source& source, const char* root, const Reader& reader);
    Element(const XmlElement& xml, Reading& reading) : xml_(xml), reading_(reading) {}

    static void read(const XmlElement& xml, Reading& reading, const Reader& reader);
    void fault_of_child(const char* child, FaultFinding what) const;
    void fault_of_text(FaultFinding what) const;
    void report_unknown() const;
    void report_unknown_attributes() const;
    void report_unknown_children() const;

    const XmlElement& xml_;
    Reading& reading_;
    std::vector<std::string> attributes_asked_;
    std::vector<std::string> children_asked_;
    std::vector<std::string> refused_;
    bool text_asked_ = false;
};

// Reads a whole file: its root must be called `root` and state its units; `reader` gets it. Gives all that is wrong, in
// the order of places, at most Faults::most_listed and a line for the rest. The root may carry the two attributes by
// which an editor finds a schema.
FaultList read_document(const Source& source, const char* root, const Element::Reader& reader);

// Blank-separated pieces of `text`.
std::vector<std::string_view> pieces_of(std::string_view text);

template <class E>
std::optional<E> Attribute::word() const
{
    if (!given()) return std::nullopt;
    const auto index = index_of_word(words_of<E>(), given_->value);
    return index ? std::optional(static_cast<E>(*index)) : std::nullopt;
}

template <class E>
std::vector<E> Attribute::words() const
{
    std::vector<E> found;
    if (!given()) return found;
    for (const std::string_view piece : pieces_of(given_->value)) {
        const auto index = index_of_word(words_of<E>(), piece);
        if (!index) continue;
        for (const E earlier : found)
            if (earlier == static_cast<E>(*index)) fault(NamedTwice{{name_, std::string(piece)}});
        found.push_back(static_cast<E>(*index));
    }
    return found;
}

}  // namespace shaftcut
