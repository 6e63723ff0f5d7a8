#include "assembly/assembly_words.hpp"

#include "checks/check_sentences.hpp"

#include <array>

#include "build/build_words.hpp"
#include "checks/check_words.hpp"
#include "separated.hpp"

namespace shaftcut::assembly_words {
namespace {

constexpr std::array captions{
    "assembly", "Customer: ", "Machine: ", "Due", "Ordered", "DO NOT BUILD",
    "This shaft allows", "shortest", "longest working", "longest turning", "longest standing", "NOT AT ALL",
    "PHASE MARKS", "TRACTOR END", "IMPLEMENT END", "pin hole: through its yoke",
    "Do in this order", "Do with each shaft", "Warnings", "Checks on the finished shaft", "What was checked", "Notes", "Why", "What could be built",
    "What is open", "Ready to send",
    "Closed", "O", "Serial no.", "Boxes of each shaft", "last sheet", "Name", "Date", "Signature"};
static_assert(captions.size() == static_cast<std::size_t>(Caption::signature) + 1);

std::string millimetres(Length length) { return figure_with_unit(length, Units::mm); }

}  // namespace

std::string say(Caption caption, const Wording& w) { return w(captions[static_cast<std::size_t>(caption)]); }

std::string title(const std::string& order, const Wording& w) { return w("Assembly work order {order}", {{"order", order}}); }
std::string build(int count, const Wording& w) { return count == 1 ? w("BUILD 1") : w("BUILD {count} ALIKE", {{"count", count}}); }
std::string shafts(int count, const Wording& w) { return count == 1 ? w("1 shaft") : w("{count} shafts alike", {{"count", count}}); }
std::string fetch_for(int count, const Wording& w) { return count == 1 ? w("Fetch, for 1 shaft") : w("Fetch, for {count} shafts alike", {{"count", count}}); }

std::string fetched(std::int64_t count, const std::string& part, const std::string& places, const Wording& w)
{
    return w("{count} × {part} — {places}", {{"count", count}, {"part", part}, {"places", places}});
}

std::string numbered(int number, const std::string& operation, const Wording& w) { return w("{number}. {operation}", {{"number", number}, {"operation", operation}}); }

std::string measured(MeasuredFrom from, const Wording& w) { return w("{from:between crosses|from the OUTER cross|from the INNER cross}", {{"from", from}}); }
std::string ordered_closed(Length closed, const Wording& w) { return w("closed {length}", {{"length", w.both(Rounded::measured, closed)}}); }

std::string say(const DrawnClosed& closed, const Wording& w)
{
    const NamedValue length{"length", w.both(Rounded::measured, closed.length)}, stated{"stated", closed.as_stated}, cross{"cross", closed.reference};
    if (!closed.has_wide_angle) return w("CLOSED {length} between the crosses", {length});
    if (closed.both) return w("{stated:closed|CLOSED} {length} between the {cross:OUTER|INNER} crosses", {stated, length, cross});
    return w("{stated:closed|CLOSED} {length} from the {cross:OUTER|INNER} cross", {stated, length, cross});
}

std::string joint_and_tube(JointKind joint, Tube tube, const Wording& w)
{
    return w("{joint:standard|wide-angle} joint, {tube:inner|outer} tube", {{"joint", joint}, {"tube", tube}});
}

std::string half(Tube tube, Length length, const Wording& w)
{
    return w("{tube:inner|outer} half {length}", {{"tube", tube}, {"length", w.length(Rounded::measured, length)}});
}

std::string blank(ShaftTube tube, bool sawn, const Wording& w)
{
    return w("{tube:INNER|OUTER} {kind:TUBE|GUARD}{sawn:, MADE TO|: saw to}", {{"tube", tube.tube}, {"kind", tube.kind}, {"sawn", sawn}});
}

std::string tolerance(Length saw, const std::optional<Length>& class_c, const Wording& w)
{
    if (!class_c) return w("± {saw}", {{"saw", millimetres(saw)}});
    return w("± {saw} (class c: ± {class_c})", {{"saw", millimetres(saw)}, {"class_c", millimetres(*class_c)}});
}

std::string hole(Length from_yoke_end, const Wording& w) { return w("hole {length} from yoke end", {{"length", hole_length(from_yoke_end, w)}}); }

std::string guard_ends(Length saw, Length guard_half, bool of_wide_angle, const Wording& w)
{
    return w("± {saw}; fitted, it ends\n{length} from {cross:the cross|INNER cross}",
             {{"saw", millimetres(saw)}, {"length", w.length(Rounded::measured, guard_half)}, {"cross", of_wide_angle}});
}

std::string held(std::size_t open, const Wording& w) { return w("HELD: {count} open", {{"count", open}}); }
std::string open_point(const std::string& what, const std::string& whom, const Wording& w) { return w("{what} Ask {whom}.", {{"what", what}, {"whom", whom}}); }
std::string to_send(const std::string& whom, const std::string& text, const Wording& w) { return w("To {whom}: {text}", {{"whom", whom}, {"text", text}}); }

std::string serial_of(int number, const Wording& w) { return w("Shaft {number}: serial no.", {{"number", number}}); }
std::string expected(Length closed, Length plus_minus, const Wording& w)
{
    return w("{length} ± {tolerance}", {{"length", w.both(Rounded::measured, closed)}, {"tolerance", millimetres(plus_minus)}});
}

std::string boxes_of_each(Length closed, Length plus_minus, MeasuredFrom from, const Wording& w)
{
    return w("Of each shaft: serial number; closed length {length} {from:between crosses|from the OUTER cross|from the INNER cross}; O, over both outer ends",
             {{"length", expected(closed, plus_minus, w)}, {"from", from}});
}

std::string on_copies(int first, int last, const Wording& w)
{
    return w("Shafts {first} to {last}: write theirs on copies of this sheet, with their numbers.", {{"first", first}, {"last", last}});
}

std::string continued_on(std::size_t sheet, bool warns, const Wording& w)
{
    return w("▼ {warns:|WARNING, }continued on sheet {sheet}", {{"warns", warns}, {"sheet", sheet}});
}

std::string made(const Check& check, const Wording& w)
{
    const auto with = [&](std::string_view pattern) {
        return w(pattern, {{"check", spoken(check.id, w)}, {"failed", check.result == CheckResult::fail}, {"value", check_figure(check, check.value, w)},
                           {"worst", check_figure(check, check.worst, w)}, {"limit", check_figure(check, check.limit, w)}});
    };
    if (check.value && check.worst && check.limit) return with("{check}: {failed:pass|FAILED}, {value}, worst {worst}, limit {limit}");
    if (check.value && check.worst) return with("{check}: {failed:pass|FAILED}, {value}, worst {worst}");
    if (check.value && check.limit) return with("{check}: {failed:pass|FAILED}, {value}, limit {limit}");
    if (check.value) return with("{check}: {failed:pass|FAILED}, {value}");
    if (check.limit) return with("{check}: {failed:pass|FAILED}, limit {limit}");
    return with("{check}: {failed:pass|FAILED}");
}

std::string not_made(const std::vector<std::string>& checks, const std::string& reason, const Wording& w)
{
    return w("NOT CHECKED, {checks}: {reason}.", {{"checks", w.all_of(checks)}, {"reason", reason}});
}

std::string run_on(const std::vector<std::string>& made, const Wording& w) { return w("{checks}.", {{"checks", separated(made, "; ")}}); }

std::string warning(const Check& check, const Wording& w) { return w("WARNING, {check}: {says}", {{"check", spoken(check.id, w)}, {"says", say(check, w)}}); }

}  // namespace shaftcut::assembly_words
