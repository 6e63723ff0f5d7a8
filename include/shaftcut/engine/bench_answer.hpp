// What a screen beside the saw shows: of an answer what the sheet's front and back say, a machine that moves, faults each at its box. Bytes of
// JSON without a newline inside, lengths in millimetres whatever the units of the words.
// Checked in tests/engine/bench_answer_test.cpp.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/engine/answer.hpp"
#include "shaftcut/trade/order/machine_frames.hpp"

namespace shaftcut {

// Of each fit that states a machine, in the job's order; or the file's problems, a job without any machine among them.
struct MachineFramesAnswer {
    std::vector<MachineFrames> machines;
    Problems problems;
    Units units = Units::mm;
};

// `answer` must hold a work order. Verdict, band, warnings, steps, confirmations, reasons, ways out, cautions and what was not checked are the cut
// sheet's own, in its words and order. Of a refused shaft no cut, kept or closed length stands in it, and no step.
std::string view_json(const Answer& answer, const Wishes& wishes);

// Needs the fonts of the wishes, by which labels find their room. Throws std::bad_alloc, and std::runtime_error with a sentence.
std::string machine_frames_json(const MachineFramesAnswer& answer, const Wishes& wishes);

// {"faults": [{"file", "path", "element", "attribute", "line", "column", "says"}]}: `file` is what its Source was called, `path` as in Problem,
// `element` and `attribute` its two parts, null where there is none.
std::string faults_json(const Problems& problems);

}  // namespace shaftcut
