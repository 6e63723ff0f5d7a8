#include "shaftcut/engine/bench_answer.hpp"

#include <stdexcept>

#include "cut_sheet/front_lines.hpp"
#include "drawing_faults.hpp"
#include "job_changes.hpp"
#include "json/faults_json.hpp"
#include "json/frames_json.hpp"
#include "json/view_json.hpp"
#include "page/font.hpp"
#include "reading/choice_words.hpp"

namespace shaftcut {
namespace {

std::vector<WayChoice> said(const std::vector<JobChoice>& choices, const Wording& w)
{
    std::vector<WayChoice> all;
    for (const JobChoice& choice : choices) all.push_back({say(choice.of, w), choice.changes});
    return all;
}

}  // namespace

std::string view_json(const Answer& answer, const Wishes& wishes)
{
    const WorkOrder& order = answer.work_order.value();
    const Wording w(order.units);
    std::vector<std::vector<WayChoice>> choices;
    for (const cut_sheet::WayLine& line : cut_sheet::ways_out(order, w)) choices.push_back(said(choices_of(order, line.of, answer.units), w));
    return view_json_of(order, choices, wishes.json, w);
}

std::string machine_frames_json(const MachineFramesAnswer& answer, const Wishes& wishes)
{
    const Wording w(answer.units);
    try {
        return machine_frames_json_of(answer.machines, wishes.fonts, wishes.json, w);
    } catch (const FontFault& fault) {
        throw std::runtime_error(font_fault(fault.what(), w));
    }
}

std::string faults_json(const Problems& problems) { return faults_json_of(problems); }

}  // namespace shaftcut
