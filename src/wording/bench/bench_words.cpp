#include "bench/bench_words.hpp"

#include "bench/bench_words_parts.hpp"

namespace shaftcut {
namespace bench_page {

BenchWords frame_words(const Wording& w)
{
    return {{"title", w("shaftcut: bench")},
            {"order", w("Order")},
            {"settings", w("Settings")},
            {"answer", w("Answer")},
            {"glove", w("Gloves")},
            {"pair", w("Pair a tablet")},
            {"pair_hint", w("Open %1 on the tablet and type this code there:")},
            {"pair_read_along", w("Anyone in this network can read along.")},
            {"jobs", w("Jobs")},
            {"new_job", w("New job")},
            {"job_in", w("Open a job file")},
            {"job_out", w("Save the job file")},
            {"throw_away", w("Throw away")},
            {"back_to_form", w("Back to the lengths")},
            {"sixteenths", w("Sixteenths of an inch")},
            {"next", w("Next:")},
            {"next_again", w("Measure again to confirm:")},
            {"again", w("measure again to confirm")},
            {"again_holds", w("Measured again: it is %1")},
            {"nothing_moves", w("Nothing moves: PTO off, engine off, key in your pocket.")},
            {"go", w("Show the box")},
            {"skip", w("Leave out")},
            {"to_rest", w("More ↓")},
            {"still", w("Still to come: %1.")},
            {"asking", w("Working it out …")},
            {"offline", w("The PC does not answer. What you typed is kept; the page asks again.")},
            {"cannot_be_right", w("Something typed cannot be right: see the box.")},
            {"keep", w("keep %1")},
            {"not_cut", w("not cut")},
            {"warnings", w("Warnings")},
            {"reasons", w("Why")},
            {"ways_out", w("What would serve")},
            {"put_in", w("Write this into the job")},
            {"unchecked", w("Not checked, for want of: %1.")},
            {"unchecked_list", w("Not checked, and what to measure for it")},
            {"confirm", w("Confirm before sawing")},
            {"cautions", w("Mind")},
            {"to_saw", w("To the saw")},
            {"cut_sheet", w("Cut sheet (PDF)")},
            {"print", w("Print the sheet")},
            {"tag", w("Tag (PDF)")},
            {"work_order", w("Work order (XLSX)")},
            {"making", w("Making it …")},
            {"made", w("Made: %1.")},
            {"printed", w("It is at the printer.")},
            {"not_made", w("It could not be made.")},
            {"no_job_file", w("That is no job file.")},
            {"choose", w("Another shaft")},
            {"quote", w("Quote")},
            {"identify", w("Which shaft is this?")},
            {"say_yes", w("yes")},
            {"say_no", w("no")}};
}

BenchWords together_words(const Wording& w)
{
    return {{"together", w("Together")},
            {"together_hint", w("The shaft off the machine, still in one piece. PTO off, engine off, key in your pocket.")},
            {"series", w("Series of the shaft")},
            {"unknown_series", w("Unknown")},
            {"unknown_series_hint", w("The series is not needed for cutting if you measure both stops. It is needed for parts.")},
            {"shape", w("Section of the tubes")},
            {"inner_tube", w("The inner tube is at the end of")},
            {"tractor", w("Tractor")},
            {"implement", w("Machine")},
            {"tractor_joint", w("Joint at the tractor: touch it")},
            {"implement_joint", w("Joint at the machine: touch it")},
            {"standard", w("one cross")},
            {"wide-angle", w("two crosses")},
            {"closed", w("Closed length")},
            {"closed_hint", w("Push it fully together. Tape straight, from the middle of one cross's cap to the middle of the other's.")},
            {"closed_drawing", w("The shaft pushed together, from the tractor's joint to the machine's, with its closed length.")},
            {"reference", w("Cross that the length is read from: touch it")},
            {"reference_hint", w("A joint with two crosses: touch the cross that you hold the tape to; the dimension line moves there.")},
            {"outer-cross", w("Outer cross")},
            {"inner-cross", w("Inner cross")},
            {"spacing", w("Between the two crosses")},
            {"spacing_hint", w("The wide-angle joint in line: from the middle of one cross to the middle of the other.")}};
}

BenchWords parted_words(const Wording& w)
{
    return {{"parted", w("Parted")},
            {"parted_hint", w("Pull the halves apart, guards on. Each length from the cross next to the tube, along the tube.")},
            {"inner_half_heading", w("Half with the inner tube")},
            {"outer_half_heading", w("Half with the outer tube")},
            {"inner_half", w("Inner tube, to its end")},
            {"inner_half_hint", w("From the middle of the cap in the tube yoke to the free end of the inner tube.")},
            {"outer_half", w("Outer tube, to its end")},
            {"outer_half_hint", w("From the middle of the cap in the tube yoke to the free end of the outer tube.")},
            {"guard", w("Guard, to its end")},
            {"guard_hint", w("Guard pushed to its joint. From the middle of the cap in the tube yoke to the free end of the guard tube.")},
            {"inner_guard", w("Guard of the inner half")},
            {"outer_guard", w("Guard of the outer half")},
            {"guard_ok", w("guard whole: type its length")},
            {"guard_none", w("guard missing")},
            {"guard_damaged", w("guard damaged")},
            {"inner_stop_depth", w("Inner tube, end to yoke (stop)")},
            {"inner_stop_depth_hint", w("From the free end along the inner tube to the face of its yoke.")},
            {"outer_stop_depth", w("Outer tube, end to stop inside")},
            {"outer_stop_depth_hint", w("A flat-ended rod pushed in along the wall to the stop, in two corners: the lesser.")},
            {"inner_drawing", w("The half with the inner tube: its length and its guard's, and what comes off.")},
            {"outer_drawing", w("The half with the outer tube: its length and its guard's, and what comes off.")}};
}

}  // namespace bench_page

std::vector<std::pair<std::string, std::string>> bench_words(const Wording& w)
{
    using namespace bench_page;
    std::vector<std::pair<std::string, std::string>> all;
    for (const auto part : {frame_words, together_words, parted_words, on_machine_words, machine_words, more_words, unchecked_words, more_box_words, saw_words, quote_words, identify_words}) {
        BenchWords words = part(w);
        all.insert(all.end(), words.begin(), words.end());
    }
    return all;
}

}  // namespace shaftcut
