// What a job, or each customer's orders of a list, costs; and the documents that say so.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/documents/form/measuring_form.hpp"
#include "shaftcut/documents/page/document.hpp"
#include "shaftcut/engine/wishes.hpp"
#include "shaftcut/trade/quote/quote.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

// `file_name`: of its documents, before the suffix: ORDER-quote, or LIST-quote-CUSTOMER. `form`: what is to be measured, of an estimate.
struct QuotePaper {
    Quote quote;
    std::string file_name;
    std::optional<MeasuringForm> form;
};

// `problems`: of the file; a list with any is not quoted at all, for an offer that lacks an order would pass for the whole. `why_not`: a sentence where the call asks for what the configuration has not,
// or the amounts are too great to be counted. `order`, `key` and `place`: of a job, as in Answer; a list has none.
struct QuoteAnswer {
    std::vector<QuotePaper> papers;
    Problems problems;
    std::string why_not;
    std::string order, key;
    Place place;
};

// Whether it ends a call with 1: incomplete, or of a cut that is refused.
bool is_open(const Quote& quote);

// ORDER-quote.pdf, .xlsx, .json, .txt; of a list LIST-quote-CUSTOMER with these ends.
std::vector<Document> documents(const QuotePaper& paper, const std::vector<Format>& formats, const Wishes& wishes);
std::vector<std::string> quote_document_names(const QuotePaper& paper, const std::vector<Format>& formats);

}  // namespace shaftcut
