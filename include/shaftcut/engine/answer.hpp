// What the engine answers, and the documents that belong to each answer.
//
// A file with faults is answered by its problems. A shaft that must not be cut is an answer: a work order that refuses.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/documents/form/measuring_form.hpp"
#include "shaftcut/documents/page/document.hpp"
#include "shaftcut/engine/wishes.hpp"
#include "shaftcut/trade/build/batch.hpp"
#include "shaftcut/trade/build/build_plan.hpp"
#include "shaftcut/trade/choose/choose.hpp"
#include "shaftcut/trade/data/firm.hpp"
#include "shaftcut/trade/identify/identified_shaft.hpp"
#include "shaftcut/trade/order/after_cut.hpp"
#include "shaftcut/trade/order/work_order.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

enum class Question { cut, lengths, after_cut, choose, quote, build, saw, form, identify };

// To one job: either a work order, or the file's problems. `order`, `key` and `place` are there as soon as the job could be read.
struct Answer {
    Question question = Question::cut;  // cut or lengths
    std::optional<WorkOrder> work_order;
    Problems problems;
    std::string order;  // its number
    std::string key;    // the same for numbers that some disks do not tell apart
    Place place;        // of the job in its file
    Firm firm;          // of the configuration: whom the tag names
    Units units = Units::mm;  // of the file's own lengths
};

// A shaft that must not be cut, or a machine for which there can be none.
bool refuses(const Answer& answer);

// To what was measured of a shaft after it was cut: what it is now, or the problems of both files and of a job that refuses the cut.
struct AfterCutAnswer {
    std::optional<ShaftAfterCut> shaft;
    Problems problems;
};

// A shaft that is not to be used, or must be measured again.
bool refuses(const AfterCutAnswer& answer);

// To a job without a shaft: what would serve, or the file's problems. `order`, `key` and `place` as of an Answer.
struct ChooseAnswer {
    std::optional<Choices> choices;
    Problems problems;
    std::string order;
    std::string key;
    Place place;
};

// No shaft of the catalogue serves as it is or after a cut.
bool refuses(const ChooseAnswer& answer);

// To what was measured of a shaft whose series is not known: which series it can be, or the file's problems. `order`: what the shaft is called, which
// names files as an order does; `key` and `place` as of an Answer.
struct IdentifyAnswer {
    std::optional<IdentifiedShaft> shaft;
    Problems problems;
    Problems warnings;     // figures that no shaft of the trade has: they count as they are
    std::string order;
    std::string key;
    Place place;
    std::string measures;  // what stands inside the file's element, as it stands there
};

// More than one series is left, or too little is known.
bool undecided(const IdentifyAnswer& answer);

// SHAFT-job.xml: the job of this shaft as far as its figures tell it, the answer's measures in it, and in the place of each figure that is still to be
// measured a "?", by which Engine::answer() names it as missing. One series: a shaft of it; mixed: each half of its own; else a shaft of no known series.
// `answer` must hold a shaft.
Document job_of(const IdentifyAnswer& answer);

struct FormAnswer {
    std::optional<MeasuringForm> form;
    std::string why_not;  // a sentence where there is none
};

// Whether an answer to this question has a document in this format.
bool comes_as(Question question, Format format);

// The documents of an answer in these formats, by format and then in the answer's own order; where it has none in one of them, none of
// that. Made in threads beside each other. Writes no file, but for those without a name in which the spreadsheets' library keeps their
// parts meanwhile. Throws std::bad_alloc, and std::runtime_error with a sentence.
// Cut: ORDER-cut-sheet.pdf, .png and .svg (pictures of its first sheet), ORDER-work-order.xlsx, ORDER.json, ORDER.txt; where it is wished
// and there can be one (why_no_tag()), ORDER-tag.pdf.
// Lengths: ORDER-lengths.pdf, .png and .svg (pictures of the first machine), .json, .txt. `answer` must hold a work order.
std::vector<Document> documents(const Answer& answer, const std::vector<Format>& formats, const Wishes& wishes);
// ORDER-after-cut.json, .txt. `answer` must hold a shaft.
std::vector<Document> documents(const AfterCutAnswer& answer, const std::vector<Format>& formats, const Wishes& wishes);
// ORDER-choices.json, .txt. `answer` must hold choices.
std::vector<Document> documents(const ChooseAnswer& answer, const std::vector<Format>& formats, const Wishes& wishes);
// ORDER-assembly.pdf and ORDER.txt of a shaft made to order; where it is wished and the shaft can be built, ORDER-plate.pdf. Its figures stand in the batch's JSON.
std::vector<Document> documents(const BuildPlan& plan, const std::vector<Format>& formats, const Wishes& wishes);
// NAME-summary.pdf; NAME-saw-plan.pdf, every profile's saw sheets one after the other, none where nothing is sawn; NAME-labels.pdf, none where nothing
// can be built or too many were asked for (why_no_labels()); NAME-batch.xlsx; NAME.txt. Its JSON is made piece by piece by BatchJson.
std::vector<Document> documents(const Batch& batch, const std::vector<Format>& formats, const Wishes& wishes);
// NAME-saw-plan.pdf, .xlsx, .json, .txt, .png and .svg (pictures of its first sheet).
std::vector<Document> documents(const SawOrder& order, const std::vector<Format>& formats, const Wishes& wishes);
// SHAFT-identify.pdf, .png and .svg (pictures of it), .json and .txt. `answer` must hold a shaft.
std::vector<Document> documents(const IdentifyAnswer& answer, const std::vector<Format>& formats, const Wishes& wishes);
// measuring-form.pdf, measuring-form-SERIES.pdf, measuring-form-SERIES-trailed.pdf, identify-form.pdf.
std::vector<Document> documents(const MeasuringForm& form, const std::vector<Format>& formats, const Wishes& wishes);

// The names that files of these formats have or, of a batch, may have, the JSON's among them. `number`: of an order,
// with "-" for what cannot stand in a file's name; `list`: a list's name.
std::vector<std::string> document_names(const Answer& answer, const std::vector<Format>& formats);
std::vector<std::string> assembly_document_names(const std::string& number, const std::vector<Format>& formats);
// That of the plate, which an earlier call may have written.
std::vector<std::string> plate_document_names(const std::string& number);
std::vector<std::string> batch_document_names(const std::string& list, const std::vector<Format>& formats);
std::vector<std::string> saw_document_names(const std::string& list, const std::vector<Format>& formats);

// Empty, or a sentence: more pieces on bars to be cut differently than one sheet or workbook is asked to hold. The JSON holds them.
std::string why_no_sheet(const SawOrder& order);
// That of the tag, which an earlier call may have written.
std::vector<std::string> tag_document_names(const Answer& answer);
// Empty, or a sentence: of a shaft that goes on no stub there is no tag. `answer` must hold a work order.
std::string why_no_tag(const Answer& answer);
// Empty, or a sentence: more labels than one file is asked to hold.
std::string why_no_labels(const Batch& batch);

}  // namespace shaftcut
