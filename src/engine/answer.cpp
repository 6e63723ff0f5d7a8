#include "shaftcut/engine/answer.hpp"

#include <array>
#include <future>

#include "document_lists.hpp"
#include "drawing_faults.hpp"
#include "engine/said.hpp"
#include "form/measuring_form_sheets.hpp"
#include "labels/labels_sheet.hpp"
#include "order_number.hpp"
#include "page/cairo_pages.hpp"
#include "page/font.hpp"
#include "shaftcut/engine/bench_card.hpp"
#include "shaftcut/engine/quote_answer.hpp"
#include "shaftcut/trade/order/tag.hpp"
#include "tag/tag_words.hpp"
#include "workbook_faults.hpp"

namespace shaftcut {
namespace {

// Pieces on bars to be cut differently.
constexpr std::size_t most_rows_on_paper = 20'000;

// A shaft that is made to order has its own words.
Wording wording_for(const BuildPlan& plan) { return Wording(plan.units, About::new_shaft); }
Wording wording_for(const Batch& batch) { return Wording(batch.units, About::new_shaft); }
Wording wording_for(const ShaftAfterCut& shaft) { return Wording(shaft.order.units); }
Wording wording_for(const QuotePaper& paper) { return Wording(paper.quote.units); }
Wording wording_for(const Tag& tag) { return Wording(tag.order.units); }
Wording wording_for(const auto& of_shaft_that_exists) { return Wording(of_shaft_that_exists.units); }

// A document of this row; what it cannot be made for is said in a sentence.
std::string written(const auto& row, const auto& from, const Wishes& wishes)
{
    const Wording w = wording_for(from);
    try {
        return row.bytes(from, wishes, w);
    } catch (const WorkbookFault& fault) {
        throw std::runtime_error(say(fault, w));
    } catch (const FontFault& fault) {
        throw std::runtime_error(font_fault(fault.what(), w));
    } catch (const DrawingFault& fault) {
        throw std::runtime_error(drawing_fault(fault.what(), w));
    }
}

// The first in this thread and each other in one of its own: a sheet and a workbook take about as long.
template <class From>
std::vector<Document> made(const From& from, const std::string& name, std::vector<Writing<From>> rows, const Wishes& wishes)
{
    std::erase_if(rows, [](const Writing<From>& row) { return !row.bytes; });
    if (rows.empty()) return {};
    const auto document = [&](const Writing<From>& row) { return Document{name + row.name_end, written(row, from, wishes)}; };
    std::vector<std::future<Document>> others;
    for (std::size_t i = 1; i < rows.size(); ++i) others.push_back(std::async(document, rows[i]));
    std::vector<Document> documents{document(rows.front())};
    for (std::future<Document>& other : others) documents.push_back(other.get());
    std::erase_if(documents, [](const Document& one) { return one.bytes.empty(); });
    return documents;
}

template <class From>
std::vector<std::string> names_of(const std::string& name, const std::vector<Writing<From>>& rows)
{
    std::vector<std::string> names;
    for (const Writing<From>& row : rows) names.push_back(name + row.name_end);
    return names;
}

template <class From>
bool any(std::span<const DocumentKind> kinds, std::span<const Writing<From>> rows, Format format)
{
    return !chosen(kinds, rows, {format}).empty();
}

}  // namespace

bool comes_as(Question question, Format format)
{
    const auto kinds = documents_of(question);
    switch (question) {
    case Question::cut:
    case Question::lengths: return any(kinds, work_order_writings(), format);
    case Question::after_cut: return any(kinds, after_cut_writings(), format);
    case Question::choose: return any(kinds, choose_writings(), format);
    case Question::build: return any(kinds, build_plan_writings(), format) || any(documents_of_batch(), batch_writings(), format);
    case Question::saw: return any(kinds, saw_order_writings(), format);
    case Question::quote: return any(kinds, quote_writings(), format);
    case Question::identify: return any(kinds, identify_writings(), format);
    case Question::form: break;
    }
    return any(kinds, form_writings(), format);
}

std::vector<Document> documents(const Answer& answer, const std::vector<Format>& formats, const Wishes& wishes)
{
    const WorkOrder& order = answer.work_order.value();
    std::vector<Document> documents = made(order, order.order, chosen(documents_of(answer.question), work_order_writings(), formats), wishes);
    if (answer.question != Question::cut || !wishes.tag || why_no_tag(order)) return documents;
    for (Document& tag : made(Tag{order, answer.firm}, order.order, chosen(documents_with_shaft(), tag_writings(), formats), wishes)) documents.push_back(std::move(tag));
    return documents;
}

std::vector<Document> documents(const AfterCutAnswer& answer, const std::vector<Format>& formats, const Wishes& wishes)
{
    const ShaftAfterCut& shaft = answer.shaft.value();
    return made(shaft, shaft.order.order, chosen(documents_of(Question::after_cut), after_cut_writings(), formats), wishes);
}

std::vector<Document> documents(const ChooseAnswer& answer, const std::vector<Format>& formats, const Wishes& wishes)
{
    const Choices& choices = answer.choices.value();
    return made(choices, choices.order, chosen(documents_of(Question::choose), choose_writings(), formats), wishes);
}

std::vector<Document> documents(const IdentifyAnswer& answer, const std::vector<Format>& formats, const Wishes& wishes)
{
    return made(answer.shaft.value(), answer.order, chosen(documents_of(Question::identify), identify_writings(), formats), wishes);
}

std::vector<Document> documents(const BuildPlan& plan, const std::vector<Format>& formats, const Wishes& wishes)
{
    auto rows = chosen(documents_of(Question::build), build_plan_writings(), formats);
    if (wishes.plate && plan.built)
        for (const auto& row : chosen(documents_with_new_shaft(), build_plan_writings(), formats)) rows.push_back(row);
    return made(plan, file_name_of(plan.order), std::move(rows), wishes);
}

std::vector<Document> documents(const Batch& batch, const std::vector<Format>& formats, const Wishes& wishes)
{
    return made(batch, batch.name, chosen(documents_of_batch(), batch_writings(), formats), wishes);
}

std::vector<Document> documents(const SawOrder& order, const std::vector<Format>& formats, const Wishes& wishes)
{
    return made(order, order.name, chosen(documents_of(Question::saw), saw_order_writings(), formats), wishes);
}

std::vector<Document> documents(const MeasuringForm& form, const std::vector<Format>& formats, const Wishes& wishes)
{
    return made(form, measuring_form_name(form), chosen(documents_of(Question::form), form_writings(), formats), wishes);
}

std::vector<Document> documents(const QuotePaper& paper, const std::vector<Format>& formats, const Wishes& wishes)
{
    return made(paper, paper.file_name, chosen(documents_of(Question::quote), quote_writings(), formats), wishes);
}

std::vector<Document> documents(const BenchCard& card, const std::vector<Format>& formats, const Wishes& wishes)
{
    constexpr std::array kinds{DocumentKind::bench_card};
    return made(card, "bench-card", chosen(std::span<const DocumentKind>(kinds), bench_card_writings(), formats), wishes);
}

std::vector<std::string> quote_document_names(const QuotePaper& paper, const std::vector<Format>& formats)
{
    return names_of(paper.file_name, chosen(documents_of(Question::quote), quote_writings(), formats));
}

std::vector<std::string> document_names(const Answer& answer, const std::vector<Format>& formats)
{
    return names_of(answer.order, chosen(documents_of(answer.question), work_order_writings(), formats));
}

std::vector<std::string> tag_document_names(const Answer& answer) { return names_of(answer.order, chosen(documents_with_shaft(), tag_writings(), {Format::pdf})); }

std::vector<std::string> assembly_document_names(const std::string& number, const std::vector<Format>& formats)
{
    return names_of(file_name_of(number), chosen(documents_of(Question::build), build_plan_writings(), formats));
}

std::vector<std::string> plate_document_names(const std::string& number)
{
    return names_of(file_name_of(number), chosen(documents_with_new_shaft(), build_plan_writings(), {Format::pdf}));
}

std::vector<std::string> batch_document_names(const std::string& list, const std::vector<Format>& formats)
{
    return names_of(list, chosen(documents_of_batch(), batch_writings(), formats));
}

std::vector<std::string> saw_document_names(const std::string& list, const std::vector<Format>& formats)
{
    return names_of(list, chosen(documents_of(Question::saw), saw_order_writings(), formats));
}

std::string why_no_tag(const Answer& answer)
{
    const WorkOrder& order = answer.work_order.value();
    const auto why = why_no_tag(order);
    return why ? tag::say(*why, order.order, Wording(order.units)) : std::string();
}

std::string why_no_sheet(const SawOrder& order)
{
    std::size_t rows = 0;
    for (const BarLayout& bar : order.bars) rows += bar.pieces.size();
    if (rows <= most_rows_on_paper) return {};
    return too_many_for_a_sheet(rows, most_rows_on_paper, Wording(order.units));
}

std::string why_no_labels(const Batch& batch)
{
    if (count_labels(batch) <= most_labels) return {};
    return too_many_labels(count_labels(batch), most_labels, Wording(batch.units));
}

}  // namespace shaftcut
