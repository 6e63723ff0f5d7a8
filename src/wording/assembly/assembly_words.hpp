// What the assembly work order says of its own: captions, and lines with figures. Checked in tests/documents/assembly/assembly_sheet_test.cpp.
#pragma once

#include "shaftcut/trade/build/build_plan.hpp"
#include "wording.hpp"

namespace shaftcut::assembly_words {

enum class Caption {
    document, customer, machine, due, ordered, do_not_build,
    allowed, shortest, longest_working, longest_turning, longest_standing, not_at_all,
    phase_marks, tractor_end, implement_end, hole_through_yoke,
    do_in_order, do_with_each, warnings, checks_on_finished, what_was_checked, notes, why, what_could_be_built,
    what_is_open, ready_to_send,
    closed, outer, serial, boxes_of_each, last_sheet, name, date, signature
};
std::string say(Caption caption, const Wording& w);

// For the file.
std::string title(const std::string& order, const Wording& w);
// "BUILD 1", "BUILD 3 ALIKE".
std::string build(int count, const Wording& w);
// "1 shaft", "3 shafts alike".
std::string shafts(int count, const Wording& w);
std::string fetch_for(int count, const Wording& w);
std::string fetched(std::int64_t count, const std::string& part, const std::string& places, const Wording& w);
std::string numbered(int number, const std::string& operation, const Wording& w);

// "between crosses", "from the OUTER cross".
std::string measured(MeasuredFrom from, const Wording& w);
std::string ordered_closed(Length closed, const Wording& w);
// Of the drawing: the closed length between these crosses, in capitals where the order states it so. `both`: both joints are wide-angle ones.
struct DrawnClosed {
    Length length;
    Reference reference;
    bool has_wide_angle, both, as_stated;
};
std::string say(const DrawnClosed& closed, const Wording& w);
std::string joint_and_tube(JointKind joint, Tube tube, const Wording& w);
std::string half(Tube tube, Length length, const Wording& w);

// "INNER TUBE: saw to", "OUTER GUARD, MADE TO".
std::string blank(ShaftTube tube, bool sawn, const Wording& w);
// "± 1 mm (class c: ± 2 mm)".
std::string tolerance(Length saw, const std::optional<Length>& class_c, const Wording& w);
std::string hole(Length from_yoke_end, const Wording& w);
// Two lines: "± 1 mm; fitted, it ends", "672 mm from the cross".
std::string guard_ends(Length saw, Length guard_half, bool of_wide_angle, const Wording& w);

// "HELD: 3 open".
std::string held(std::size_t open, const Wording& w);
std::string open_point(const std::string& what, const std::string& whom, const Wording& w);
std::string to_send(const std::string& whom, const std::string& text, const Wording& w);

std::string serial_of(int number, const Wording& w);
// "766 mm ± 3 mm".
std::string expected(Length closed, Length plus_minus, const Wording& w);
std::string boxes_of_each(Length closed, Length plus_minus, MeasuredFrom from, const Wording& w);
std::string on_copies(int first, int last, const Wording& w);
// `warns`: a warning is among what follows.
std::string continued_on(std::size_t sheet, bool warns, const Wording& w);

// "closing clearance: pass, 44 mm, worst 42 mm, limit 40 mm".
std::string made(const Check& check, const Wording& w);
std::string not_made(const std::vector<std::string>& checks, const std::string& reason, const Wording& w);
// Several made() behind each other.
std::string run_on(const std::vector<std::string>& made, const Wording& w);
std::string warning(const Check& check, const Wording& w);

}  // namespace shaftcut::assembly_words
