// Every length that a job's papers print, read back from them: each quantity in one figure, and none on the wrong side of what it is.
#include <regex>

#include "commands/program.hpp"
#include "documents/page/print_checks.hpp"
#include "documents/sample_orders.hpp"
#include "page/cairo_pages.hpp"
#include "parse.hpp"
#include "support/fonts.hpp"
#include "support/papers.hpp"
#include "support/drawn/random_jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// All words of the text with one blank between them, so that it does not matter where lines were broken.
std::string in_one_line(const std::string& text) { return std::regex_replace(text, std::regex("\\s+"), " "); }

std::string printed_text(const Folder& folder, const WorkOrder& order)
{
    write(folder.file("sheet.pdf"), pdf_of(cut_sheet_of(order, Paper::a4), cut_sheet_info_of(order), font_files()));
    const std::string sheet = in_one_line(output_of("pdftotext -raw " + folder.file("sheet.pdf") + " -"));
    return sheet + " " + in_one_line(terminal_text_of(order));
}

// The figures that stand behind these words, without their unit.
std::vector<std::string> figures_behind(const std::string& text, const std::string& words)
{
    const std::regex pattern(words + " ?\\(?(-?[0-9][-0-9./]*)");
    std::vector<std::string> figures;
    for (std::sregex_iterator at(text.begin(), text.end(), pattern), end; at != end; ++at) {
        std::string figure = (*at)[1];
        while (figure.back() == '.') figure.pop_back();
        figures.push_back(figure);
    }
    return figures;
}

// A quantity and the words before it on the papers.
struct Named {
    std::string name;
    Rounded as;
    std::vector<Length> lengths;  // one of them
    std::vector<std::string> words;
};

Length value_of(const WorkOrder& order, CheckId id) { return Length::micrometres(check_of(order.checks, id).value.value()); }

std::vector<Named> quantities(const WorkOrder& order)
{
    const CutFigures& cut = *order.cut;
    Named kept{"what is kept", Rounded::kept, {}, {"\\(keep", ", keep", "\\(stays", "as it is, keep"}};
    Named off{"what comes off", Rounded::cut, {}, {" (?:tube|guard) cut"}};
    for (const Tube tube : both_tubes) {
        kept.lengths.insert(kept.lengths.end(), {cut.plan.half[tube], cut.plan.guard_half[tube].value_or(Length())});
        off.lengths.insert(off.lengths.end(), {cut.plan.cut[tube], cut.plan.guard_cut[tube].value_or(Length())});
    }
    const Reference stated = order.reading.has_wide_angle ? order.reading.reference : Reference::inner_cross;
    const Length clearance = order.limits.length(Limit::closing_clearance);
    return {kept, off,
            {"shortest", Rounded::shortest, {order.fit.shortest->value}, {"Shortest(?= [-0-9./]+ (?:mm|in), longest)", "At the shortest"}},
            {"longest turning", Rounded::longest, {order.fit.longest[Range::turning]->value}, {"At the longest, turning", ", turning(?= [-0-9./]+ (?:mm|in), standing)"}},
            {"closed now", Rounded::measured, {order.reading.closed_at[stated]}, {"Closed now:"}},
            {"closed after", Rounded::closed_after, {cut.closed_at[stated]}, {"After the cut:", "closed length after the cut"}},
            {"clearance", Rounded::clearance, {value_of(order, CheckId::closing_clearance)}, {"Left to close at the shortest:", "Clearance left at the shortest length is", "closing-clearance"}},
            {"clearance asked", Rounded::clearance, {clearance}, {"Shortest position: at least", "closing-clearance [-0-9./]+ (?:mm|in) [-0-9./]+ (?:mm|in)"}},
            {"overlap at the longest", Rounded::overlap, {*cut.overlap.longest[Range::turning]}, {"At the longest turning length the overlap is"}}};
}

// How many figures were compared.
int compare_figures(const WorkOrder& order, const std::string& text)
{
    int compared = 0;
    for (const Named& one : quantities(order))
        for (const std::string& words : one.words)
            for (const std::string& found : figures_behind(text, words)) {
                INFO(one.name << " behind \"" << words << "\": " << found);
                bool right = false;
                // In inches the millimetres stand beside some of them.
                for (const Length length : one.lengths) right = right || found == figure_of(one.as, length, order.units) || found == figure_of(one.as, length, Units::mm);
                CHECK(right);
                ++compared;
            }
    return compared;
}

// Every kept length on the papers, read again, is one of those that are kept or shorter by less than a sixteenth.
void check_kept(const WorkOrder& order, const std::string& text)
{
    std::vector<Length> kept;
    for (const Tube tube : both_tubes) kept.insert(kept.end(), {order.cut->plan.half[tube], order.cut->plan.guard_half[tube].value_or(Length())});
    for (const char* words : {"\\(keep", "\\(stays", "it is, keep"})
        for (const std::string& found : figures_behind(text, words)) {
            INFO(words << " " << found);
            const Length printed = std::get<Length>(parse_length(found + " " + unit_word(order.units), order.units));
            // A sixteenth is stored to the micrometre.
            const auto is_of = [&](Length length) { return printed - length <= Length::micrometres(2) && length - printed < Length::micrometres(1588); };
            CHECK(std::any_of(kept.begin(), kept.end(), is_of));
        }
}

}  // namespace

TEST_CASE("each quantity of a sample has one figure on all its papers, in millimetres and in inches")
{
    const Folder folder;
    int compared = 0;
    for (const SheetCase& one : sample_orders(source_folder)) {
        if (!one.order.cut) continue;
        INFO(one.name);
        const std::string text = printed_text(folder, one.order);
        compared += compare_figures(one.order, text);
        check_kept(one.order, text);
    }
    CHECK(compared > 300);
}

TEST_CASE("each quantity of a shaft of any length has one figure, and nothing kept is printed too long")
{
    const Folder folder;
    Dice dice(1612);
    int compared = 0;
    for (int i = 0; i < 40; ++i) {
        Job job_ = i % 4 == 0 ? fits_job() : demo_job();
        const Length more = Length::micrometres(dice.from(0, 60'000));
        for (const Tube tube : both_tubes) {
            job_.shaft.halves[tube].length->length += more;
            job_.shaft.halves[tube].guard->length += more;
        }
        job_.shaft.closed.length += more;
        job_.fits[0].shortest->length += more;
        for (const Range range : all_ranges) job_.fits[0].longest[range]->length += more;
        for (const Units units : {Units::mm, Units::in}) {
            const WorkOrder order = worked_in(job_, units);
            INFO("number " << i << ", " << more.um() << " um, " << unit_word(units));
            REQUIRE(order.cut);
            const std::string text = printed_text(folder, order);
            compared += compare_figures(order, text);
            check_kept(order, text);
        }
    }
    CHECK(compared > 1000);
}
