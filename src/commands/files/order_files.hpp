// Which order of a call each job file has: documents are named after it, so that no two jobs of a call may share one.
#pragma once

#include <map>
#include <string>

#include "commands/usage_faults.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

class OrderFiles {
public:
    // What is wrong with an answer to the job of this file: its own problems, or that an earlier file has its order. An Answer or the like.
    template <class Answer>
    Problems problems_of(const Answer& answer, const std::string& path, const Wording& w)
    {
        if (answer.order.empty()) return answer.problems;
        const auto [earlier, added] = files_.emplace(answer.key, path);
        if (added) return answer.problems;
        const Said again = order_again(answer.order, earlier->second, w);
        return {{answer.place, again.wrong, again.right}};
    }

private:
    std::map<std::string, std::string> files_;  // by an answer's key
};

}  // namespace shaftcut
