// What a quote says in running text: what is done, why not, when and how.
#include "quote_sheet/quote_sheet_parts.hpp"

namespace shaftcut::quote_sheet {
namespace {

void add_found(Blocks& blocks, const Quote& quote, Spacing spacing, const Wording& w)
{
    for (const QuotedWork& work : quote.work)
        if (const std::string faults = found(quote, work, w); !faults.empty()) blocks.push_back({Lead::bullet, faults, true, spacing});
}

void add_caution(Blocks& blocks, const Quote& quote, Spacing spacing, const Wording& w)
{
    if (const std::string caution = cannot_be_undone(quote, w); !caution.empty()) blocks.push_back({Lead::bullet, caution, true, spacing});
}

}  // namespace

Blocks work_blocks(const Quote& quote, Spacing spacing, const Wording& w)
{
    Blocks blocks;
    if (quote.work.empty()) return blocks;
    blocks.push_back({Lead::heading, say(Caption::what_is_done, w), false, spacing});
    for (const QuotedWork& work : quote.work) blocks.push_back({Lead::bullet, what_is_done(quote, work, w), false, spacing});
    add_found(blocks, quote, spacing, w);
    add_caution(blocks, quote, spacing, w);
    return blocks;
}

Blocks refusal_blocks(const Quote& quote, Spacing spacing, const Wording& w)
{
    Blocks blocks{{Lead::heading, say(Caption::why_not, w), false, spacing}};
    for (const QuotedWork& work : quote.work) {
        blocks.push_back({Lead::none, what_is_done(quote, work, w), false, spacing});
        for (const std::string& reason : why_not(work, w)) blocks.push_back({Lead::bullet, reason, true, spacing});
    }
    add_found(blocks, quote, spacing, w);
    return blocks;
}

Blocks condition_blocks(const Quote& quote, Spacing spacing, const Wording& w)
{
    Blocks blocks;
    const std::vector<std::string> said = conditions(quote, w);
    if (said.empty()) return blocks;
    blocks.push_back({Lead::heading, say(Caption::when_and_how, w), false, spacing});
    // Of what is refused it belongs to what is offered instead.
    if (kind_of(quote) == Kind::refused) add_caution(blocks, quote, spacing, w);
    for (const std::string& one : said) blocks.push_back({Lead::bullet, one, false, spacing});
    return blocks;
}

}  // namespace shaftcut::quote_sheet
