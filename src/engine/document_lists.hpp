// Two lists: which documents belong to an answer, and in which formats each of them can be written.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "shaftcut/documents/bench_card/bench_card.hpp"
#include "shaftcut/engine/answer.hpp"
#include "shaftcut/engine/quote_answer.hpp"
#include "tag/tag_sheet.hpp"
#include "wording.hpp"

namespace shaftcut {

enum class DocumentKind {
    cut_sheet, work_order, answer, tag,                     // of a shaft that exists
    lengths_sheet, lengths_answer,                          // of a machine
    after_cut_answer,                                       // of a shaft as it was cut
    choose_answer,                                          // of the catalogue's shafts for a job without one
    assembly, assembly_answer, plate,                       // of one order of a list
    batch_summary, batch_saw_sheets, labels, batch_workbook, batch_answer, // of a list of orders
    saw_sheet, saw_workbook, saw_answer,                    // of a list of pieces
    measuring_form,
    quote_sheet, quote_workbook, quote_answer,              // of what something costs
    bench_card,                                             // of the bench page
    identify_sheet, identify_answer                         // of a shaft whose series is asked for
};

// The first list. In the order in which they are handed out.
std::span<const DocumentKind> documents_of(Question question);
// What goes with a shaft that was cut, where it is wished.
std::span<const DocumentKind> documents_with_shaft();
// What goes on a new shaft, where it is wished.
std::span<const DocumentKind> documents_with_new_shaft();
// Those of a whole list of orders; documents_of(build) are each order's.
std::span<const DocumentKind> documents_of_batch();

// A row of the second list: how a document is named, and written in one format, from what it tells.
template <class From>
struct Writing {
    DocumentKind document;
    Format format;
    const char* name_end;  // after the order's number or the list's name
    std::string (*bytes)(const From&, const Wishes&, const Wording&);  // empty: this once there is nothing to write. No function: written piece by piece
};

// The second list, by what the documents tell.
std::span<const Writing<WorkOrder>> work_order_writings();
std::span<const Writing<ShaftAfterCut>> after_cut_writings();
std::span<const Writing<Choices>> choose_writings();
std::span<const Writing<Tag>> tag_writings();
std::span<const Writing<BuildPlan>> build_plan_writings();
std::span<const Writing<Batch>> batch_writings();
std::span<const Writing<SawOrder>> saw_order_writings();
std::span<const Writing<MeasuringForm>> form_writings();
std::span<const Writing<QuotePaper>> quote_writings();
std::span<const Writing<BenchCard>> bench_card_writings();
std::span<const Writing<IdentifiedShaft>> identify_writings();

// The rows of these documents in these formats, by format and then by document.
template <class From>
std::vector<Writing<From>> chosen(std::span<const DocumentKind> kinds, std::span<const Writing<From>> rows, const std::vector<Format>& formats)
{
    std::vector<Writing<From>> found;
    for (const Format format : formats)
        for (const DocumentKind kind : kinds)
            for (const Writing<From>& row : rows)
                if (row.document == kind && row.format == format) found.push_back(row);
    return found;
}

}  // namespace shaftcut
