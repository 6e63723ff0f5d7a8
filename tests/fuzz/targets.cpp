#include "fuzz/targets.hpp"

namespace shaftcut::fuzz {
namespace {
constexpr std::size_t papers_of_one_in = 64;
}

const std::array<Target, 12>& targets()
{
    static const std::array<Target, 12> all{{
        {"job", try_job, {"samples", "tests/reading/good", "tests/reading/bad"}},
        {"measured", try_measured, {"samples/after-cut", "tests/reading/good", "tests/reading/bad"}},
        {"measures", try_measures, {"samples/identify", "tests/reading/good", "tests/reading/bad/measures"}},
        {"choose", try_choose, {"samples/choose", "tests/reading/good", "tests/reading/bad/choose"}},
        {"catalogue", try_catalogue, {"config", "tests/reading/good", "tests/reading/bad"}},
        {"workshop", try_workshop, {"config", "tests/reading/good", "tests/reading/bad"}},
        {"orders", try_orders, {"tests/fuzz/corpus/orders", "tests/reading/good", "tests/reading/bad"}},
        {"workbook", try_workbook, {"tests/fuzz/corpus/workbook", "tests/reading/lists/xlsx"}},
        {"lengths", try_lengths, {"tests/fuzz/corpus/lengths"}},
        {"documents", [](std::string_view bytes) { return try_documents(bytes, papers_of_one_in); }, {"samples", "tests/reading/good"}},
        {"bench", try_bench, {"tests/fuzz/corpus/bench"}},
        {"bench_request", try_bench_request, {"tests/fuzz/corpus/bench_request"}},
    }};
    return all;
}

}  // namespace shaftcut::fuzz
