#include "labels/labels_words.hpp"

#include "build/build_words.hpp"

namespace shaftcut::labels_words {
namespace {

MeasuredFrom from(const BatchLengths& built) { return measured_from(built.has_wide_angle, built.reference); }

}  // namespace

std::string piece(ShaftTube tube, const Wording& w) { return w("{tube:INNER|OUTER} {kind:TUBE|GUARD TUBE}", {{"tube", tube.tube}, {"kind", tube.kind}}); }

std::string piece_number(const BatchPiece& piece, std::int64_t number, const Wording& w)
{
    return w("◄ yoke at the {end:tractor|implement} end; no. {number} of {count}", {{"end", piece.end}, {"number", number}, {"count", piece.count}});
}

std::string taken_from(const BatchPiece& piece, std::size_t position, std::int64_t bar, const Wording& w)
{
    const NamedValue at{"position", position}, profile{"profile", piece.profile};
    if (bar > 0) return w("label {position}: {profile}, bar {bar}", {at, profile, {"bar", bar}});
    return w("label {position}: {profile}, {sawn:made to length|in no saw plan}", {at, profile, {"sawn", piece.sawn}});
}

std::string pin_hole(Length from_yoke_end, const Wording& w) { return w("pin hole {length} from its yoke end", {{"length", hole_length(from_yoke_end, w)}}); }

std::string closed(const BatchLengths& built, const Wording& w) { return w("closed {length}", {{"length", w.length(Rounded::measured, built.closed)}}); }

std::string shaft_number(const BatchLengths& built, std::int64_t number, std::int64_t of, const Wording& w)
{
    return w("{from:between the crosses|from the OUTER cross|from the INNER cross}; shaft {number} of {count}", {{"from", from(built)}, {"number", number}, {"count", of}});
}

std::string use(const BatchLengths& built, const Wording& w)
{
    const auto to = [&](Range range) {
        const auto& longest = built.use.longest[range];
        return longest ? w.length(Rounded::kept, (*longest)[built.reference]) : w("NOT AT ALL");
    };
    return w("Pull to at most: working {working}, turning {turning}, standing {standing}; push to no less than {shortest}.",
             {{"working", to(Range::working)}, {"turning", to(Range::turning)}, {"standing", to(Range::standing)},
              {"shortest", w.length(Rounded::closed_after, built.use.shortest[built.reference])}});
}

std::string danger(const Wording& w) { return w("DANGER: a turning shaft kills."); }
std::string shaft_code(const std::string& order, const Wording& w) { return w("{order} shaft", {{"order", order}}); }

}  // namespace shaftcut::labels_words
