#include "document_lists.hpp"

#include <array>
#include <type_traits>

#include "assembly/assembly_sheet.hpp"
#include "bench_card/bench_card_sheet.hpp"
#include "cut_sheet/cut_sheet.hpp"
#include "engine/said.hpp"
#include "form/measuring_form_sheets.hpp"
#include "geometry_sheet/geometry_sheet.hpp"
#include "identify_sheet/identify_sheet.hpp"
#include "json/quote_json.hpp"
#include "labels/labels_sheet.hpp"
#include "page/cairo_pages.hpp"
#include "plate/plate_sheet.hpp"
#include "quote_book/quote_workbook.hpp"
#include "quote_sheet/quote_sheet.hpp"
#include "saw_book/batch_workbook.hpp"
#include "saw_book/saw_workbook.hpp"
#include "saw_sheet/batch_saw_sheets.hpp"
#include "saw_sheet/batch_summary.hpp"
#include "saw_sheet/saw_sheet.hpp"
#include "terminal/after_cut_terminal.hpp"
#include "terminal/build_terminal.hpp"
#include "terminal/choose_terminal.hpp"
#include "terminal/identify_terminal.hpp"
#include "terminal/lengths_terminal.hpp"
#include "terminal/quote_terminal.hpp"
#include "terminal/terminal_text.hpp"
#include "work_order_book/work_order_workbook.hpp"

namespace shaftcut {
namespace {

using enum DocumentKind;

constexpr double picture_dots_per_inch = 110;

// A sheet's pages and what its file says of itself, by functions that take the wording or have none to say.
template <auto draw, class From>
std::vector<Page> pages_of(const From& from, const Wishes& wishes, const Wording& w)
{
    if constexpr (std::is_invocable_v<decltype(draw), const From&, Paper, const FontFiles&, const Wording&>) return draw(from, wishes.paper, wishes.fonts, w);
    else return draw(from, wishes.paper, wishes.fonts);
}

template <auto info, class From>
DocumentInfo info_of(const From& from, const Wording& w)
{
    if constexpr (std::is_invocable_v<decltype(info), const From&, const Wording&>) return info(from, w);
    else return info(from);
}

template <class From, auto draw, auto info>
std::string pdf(const From& from, const Wishes& wishes, const Wording& w)
{
    return pdf_of(pages_of<draw>(from, wishes, w), info_of<info>(from, w), wishes.fonts);
}

template <class From, auto draw>
std::string png(const From& from, const Wishes& wishes, const Wording& w)
{
    return png_of(pages_of<draw>(from, wishes, w).front(), picture_dots_per_inch, wishes.fonts);
}

template <class From, auto draw>
std::string svg(const From& from, const Wishes& wishes, const Wording& w)
{
    return svg_of(pages_of<draw>(from, wishes, w).front(), wishes.fonts);
}

std::vector<Page> machine_picture(const WorkOrder& order, Paper paper, const FontFiles& fonts, const Wording& w) { return {draw_machine_picture(order, paper, fonts, w)}; }

constexpr std::array work_order_rows{
    Writing<WorkOrder>{cut_sheet, Format::pdf, "-cut-sheet.pdf", pdf<WorkOrder, draw_cut_sheet, cut_sheet_info>},
    Writing<WorkOrder>{cut_sheet, Format::png, "-cut-sheet.png", png<WorkOrder, draw_cut_sheet>},
    Writing<WorkOrder>{cut_sheet, Format::svg, "-cut-sheet.svg", svg<WorkOrder, draw_cut_sheet>},
    Writing<WorkOrder>{work_order, Format::xlsx, "-work-order.xlsx", [](const WorkOrder& order, const Wishes& wishes, const Wording& w) { return workbook_of(order, w, wishes.paper); }},
    Writing<WorkOrder>{answer, Format::json, ".json", [](const WorkOrder& order, const Wishes& wishes, const Wording&) { return json_of(order, wishes.json); }},
    Writing<WorkOrder>{answer, Format::terminal, ".txt", [](const WorkOrder& order, const Wishes& wishes, const Wording& w) { return terminal_text(order, wishes.colour, w); }},
    Writing<WorkOrder>{lengths_sheet, Format::pdf, "-lengths.pdf", pdf<WorkOrder, draw_geometry_sheet, geometry_sheet_info>},
    Writing<WorkOrder>{lengths_sheet, Format::png, "-lengths.png", png<WorkOrder, machine_picture>},
    Writing<WorkOrder>{lengths_sheet, Format::svg, "-lengths.svg", svg<WorkOrder, machine_picture>},
    Writing<WorkOrder>{lengths_answer, Format::json, "-lengths.json", [](const WorkOrder& order, const Wishes& wishes, const Wording&) { return lengths_json_of(order, wishes.json); }},
    Writing<WorkOrder>{lengths_answer, Format::terminal, "-lengths.txt", [](const WorkOrder& order, const Wishes& wishes, const Wording& w) { return lengths_text(order, wishes.colour, w); }},
};

constexpr std::array after_cut_rows{
    Writing<ShaftAfterCut>{after_cut_answer, Format::json, "-after-cut.json", [](const ShaftAfterCut& shaft, const Wishes& wishes, const Wording&) { return json_of(shaft, wishes.json); }},
    Writing<ShaftAfterCut>{after_cut_answer, Format::terminal, "-after-cut.txt", [](const ShaftAfterCut& shaft, const Wishes& wishes, const Wording& w) { return after_cut_text(shaft, wishes.colour, w); }},
};

constexpr std::array choose_rows{
    Writing<Choices>{choose_answer, Format::json, "-choices.json", [](const Choices& choices, const Wishes& wishes, const Wording&) { return json_of(choices, wishes.json); }},
    Writing<Choices>{choose_answer, Format::terminal, "-choices.txt", [](const Choices& choices, const Wishes& wishes, const Wording& w) { return choices_text(choices, wishes.colour, w); }},
};

constexpr std::array identify_rows{
    Writing<IdentifiedShaft>{identify_sheet, Format::pdf, "-identify.pdf", pdf<IdentifiedShaft, draw_identify_sheet, identify_sheet_info>},
    Writing<IdentifiedShaft>{identify_sheet, Format::png, "-identify.png", png<IdentifiedShaft, draw_identify_sheet>},
    Writing<IdentifiedShaft>{identify_sheet, Format::svg, "-identify.svg", svg<IdentifiedShaft, draw_identify_sheet>},
    Writing<IdentifiedShaft>{identify_answer, Format::json, "-identify.json", [](const IdentifiedShaft& shaft, const Wishes& wishes, const Wording&) { return json_of(shaft, wishes.json); }},
    Writing<IdentifiedShaft>{identify_answer, Format::terminal, "-identify.txt", [](const IdentifiedShaft& shaft, const Wishes& wishes, const Wording& w) { return identify_text(shaft, wishes.colour, w); }},
};

constexpr std::array tag_rows{
    Writing<Tag>{DocumentKind::tag, Format::pdf, "-tag.pdf", pdf<Tag, draw_tag, tag_info>},
};

constexpr std::array build_plan_rows{
    Writing<BuildPlan>{assembly, Format::pdf, "-assembly.pdf", pdf<BuildPlan, draw_assembly_sheet, assembly_sheet_info>},
    Writing<BuildPlan>{plate, Format::pdf, "-plate.pdf", pdf<BuildPlan, draw_plates, plates_info>},
    Writing<BuildPlan>{assembly_answer, Format::terminal, ".txt", [](const BuildPlan& plan, const Wishes& wishes, const Wording& w) { return terminal_text(plan, wishes.colour, w); }},
};

std::string batch_saw_pdf(const Batch& batch, const Wishes& wishes, const Wording& w)
{
    const std::vector<Page> pages = draw_batch_saw_sheets(batch, wishes.paper, wishes.fonts);
    if (pages.empty()) return {};
    return pdf_of(pages, document_info(batch_saw_title(batch.name, w), batch.owner, batch_saw_subject(w)), wishes.fonts);
}

std::string labels_pdf(const Batch& batch, const Wishes& wishes, const Wording& w)
{
    if (count_labels(batch) > most_labels) return {};
    const LabelSheets sheets = label_sheets(batch, wishes.paper, wishes.fonts);
    if (sheets.count == 0) return {};
    const auto draw = [&](std::size_t number) {
        Page page = sheets.draw(number);
        if (wishes.labels_drawn) wishes.labels_drawn(number + 1, sheets.count);
        return page;
    };
    return pdf_of(sheets.count, draw, document_info(labels_title(batch.name, w), batch.owner, labels_subject(w)), wishes.fonts);
}

constexpr std::array batch_rows{
    Writing<Batch>{batch_summary, Format::pdf, "-summary.pdf", pdf<Batch, draw_batch_summary, batch_summary_info>},
    Writing<Batch>{batch_saw_sheets, Format::pdf, "-saw-plan.pdf", batch_saw_pdf},
    Writing<Batch>{labels, Format::pdf, "-labels.pdf", labels_pdf},
    Writing<Batch>{batch_workbook, Format::xlsx, "-batch.xlsx", [](const Batch& batch, const Wishes& wishes, const Wording&) { return batch_workbook_of(batch, wishes.paper); }},
    Writing<Batch>{batch_answer, Format::json, ".json", nullptr},
    Writing<Batch>{batch_answer, Format::terminal, ".txt", [](const Batch& batch, const Wishes& wishes, const Wording& w) { return terminal_text(batch, wishes.colour, w); }},
};

constexpr std::array saw_order_rows{
    Writing<SawOrder>{saw_sheet, Format::pdf, "-saw-plan.pdf", pdf<SawOrder, draw_saw_sheet, saw_sheet_info>},
    Writing<SawOrder>{saw_sheet, Format::png, "-saw-plan.png", png<SawOrder, draw_saw_sheet>},
    Writing<SawOrder>{saw_sheet, Format::svg, "-saw-plan.svg", svg<SawOrder, draw_saw_sheet>},
    Writing<SawOrder>{saw_workbook, Format::xlsx, "-saw-plan.xlsx", [](const SawOrder& order, const Wishes& wishes, const Wording&) { return saw_workbook_of(order, wishes.paper); }},
    Writing<SawOrder>{saw_answer, Format::json, "-saw-plan.json", [](const SawOrder& order, const Wishes& wishes, const Wording&) { return json_of(order, wishes.json); }},
    Writing<SawOrder>{saw_answer, Format::terminal, "-saw-plan.txt", [](const SawOrder& order, const Wishes& wishes, const Wording& w) { return terminal_text(order, wishes.colour, w); }},
};

constexpr std::array form_rows{
    Writing<MeasuringForm>{DocumentKind::measuring_form, Format::pdf, ".pdf",
                           [](const MeasuringForm& form, const Wishes& wishes, const Wording& w) { return measuring_form_pdf(form, wishes.paper, wishes.fonts, w); }},
};

// An estimate goes home with what is to be measured there.
std::string quote_pdf(const QuotePaper& paper, const Wishes& wishes, const Wording& w)
{
    std::vector<Page> pages = draw_quote_sheet(paper.quote, wishes.paper, wishes.fonts, w);
    if (paper.form)
        for (Page& page : draw_measuring_form(*paper.form, wishes.paper, wishes.fonts, w)) pages.push_back(std::move(page));
    return pdf_of(pages, quote_sheet_info(paper.quote, w), wishes.fonts);
}

constexpr std::array quote_rows{
    Writing<QuotePaper>{quote_sheet, Format::pdf, ".pdf", quote_pdf},
    Writing<QuotePaper>{quote_workbook, Format::xlsx, ".xlsx", [](const QuotePaper& paper, const Wishes& wishes, const Wording& w) { return quote_workbook_of(paper.quote, w, wishes.paper); }},
    Writing<QuotePaper>{quote_answer, Format::json, ".json", [](const QuotePaper& paper, const Wishes& wishes, const Wording& w) { return json_of(paper.quote, wishes.json, w); }},
    Writing<QuotePaper>{quote_answer, Format::terminal, ".txt", [](const QuotePaper& paper, const Wishes& wishes, const Wording& w) { return quote_text(paper.quote, wishes.colour, w); }},
};

constexpr std::array bench_card_rows{
    Writing<BenchCard>{DocumentKind::bench_card, Format::pdf, ".pdf", pdf<BenchCard, draw_bench_card, bench_card_info>},
};

constexpr std::array identify_kinds{identify_sheet, identify_answer};
constexpr std::array quote_kinds{quote_sheet, quote_workbook, quote_answer};
constexpr std::array cut_kinds{cut_sheet, work_order, answer};
constexpr std::array with_shaft_kinds{DocumentKind::tag};
constexpr std::array with_new_shaft_kinds{plate};
constexpr std::array lengths_kinds{lengths_sheet, lengths_answer};
constexpr std::array after_cut_kinds{after_cut_answer};
constexpr std::array choose_kinds{choose_answer};
constexpr std::array build_kinds{assembly, assembly_answer};
constexpr std::array batch_kinds{batch_summary, batch_saw_sheets, labels, batch_workbook, batch_answer};
constexpr std::array saw_kinds{saw_sheet, saw_workbook, saw_answer};
constexpr std::array form_kinds{DocumentKind::measuring_form};

}  // namespace

std::span<const DocumentKind> documents_of(Question question)
{
    switch (question) {
    case Question::cut: return cut_kinds;
    case Question::lengths: return lengths_kinds;
    case Question::after_cut: return after_cut_kinds;
    case Question::choose: return choose_kinds;
    case Question::build: return build_kinds;
    case Question::saw: return saw_kinds;
    case Question::quote: return quote_kinds;
    case Question::identify: return identify_kinds;
    case Question::form: break;
    }
    return form_kinds;
}

std::span<const DocumentKind> documents_with_shaft() { return with_shaft_kinds; }

std::span<const DocumentKind> documents_with_new_shaft() { return with_new_shaft_kinds; }

std::span<const DocumentKind> documents_of_batch() { return batch_kinds; }

std::span<const Writing<WorkOrder>> work_order_writings() { return work_order_rows; }
std::span<const Writing<ShaftAfterCut>> after_cut_writings() { return after_cut_rows; }
std::span<const Writing<Choices>> choose_writings() { return choose_rows; }
std::span<const Writing<Tag>> tag_writings() { return tag_rows; }
std::span<const Writing<BuildPlan>> build_plan_writings() { return build_plan_rows; }
std::span<const Writing<Batch>> batch_writings() { return batch_rows; }
std::span<const Writing<SawOrder>> saw_order_writings() { return saw_order_rows; }
std::span<const Writing<MeasuringForm>> form_writings() { return form_rows; }
std::span<const Writing<QuotePaper>> quote_writings() { return quote_rows; }
std::span<const Writing<BenchCard>> bench_card_writings() { return bench_card_rows; }
std::span<const Writing<IdentifiedShaft>> identify_writings() { return identify_rows; }

}  // namespace shaftcut
