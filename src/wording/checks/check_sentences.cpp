#include "checks/check_sentences.hpp"

#include "checks/finding_sentences.hpp"
#include "separated.hpp"

namespace shaftcut {
namespace {

void add(std::vector<std::string>& sentences, const std::vector<CheckFinding>& findings, const Wording& w)
{
    for (const CheckFinding& finding : findings) sentences.push_back(say(finding, w));
}

}  // namespace

std::string say(const CheckFinding& finding, const Wording& w)
{
    return std::visit([&](const auto& one) { return sentence(one, w); }, finding);
}

std::string say(const Check& check, const Wording& w)
{
    std::vector<std::string> sentences;
    add(sentences, check.contradictions, w);
    add(sentences, check.findings, w);
    return running_text(sentences);
}

std::vector<std::string> basis_clauses(const Check& check, const Wording& w)
{
    std::vector<std::string> clauses;
    for (const CheckBasis& one : check.basis) clauses.push_back(clause(one, w));
    return clauses;
}

std::string basis(const Check& check, const Wording& w) { return separated(basis_clauses(check, w), "; "); }

std::vector<std::string> reasons_to_refuse(const std::vector<Check>& checks, const Wording& w)
{
    std::vector<std::string> reasons;
    for (const Check& check : checks) {
        if (check.result != CheckResult::fail) continue;
        if (check.contradictions.empty()) reasons.push_back(say(check, w));
        else add(reasons, check.contradictions, w);
    }
    return reasons;
}

}  // namespace shaftcut
