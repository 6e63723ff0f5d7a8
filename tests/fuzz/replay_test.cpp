// Every target over its corpus and over some thousand inputs made from it, the same on every machine. The long search is
// tests/fuzz/run.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>

#include "fuzz/targets.hpp"
#include "support/catch.hpp"

using namespace shaftcut::fuzz;

namespace {

std::vector<std::string> corpus_of(const Target& target)
{
    std::vector<std::filesystem::path> files;
    for (const std::string& folder : target.corpus)
        for (const auto& entry : std::filesystem::recursive_directory_iterator(SHAFTCUT_SOURCE_DIR "/" + folder))
            if (entry.path().extension() == ".xml" || entry.path().extension() == ".txt" || entry.path().extension() == ".xlsx") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    std::vector<std::string> inputs;
    for (const auto& path : files) {
        std::ifstream file(path, std::ios::binary);
        inputs.emplace_back(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
    }
    return inputs;
}

// An input with one to four places changed: bytes flipped, left out, doubled, or taken from another input.
class Mutation {
public:
    explicit Mutation(const std::vector<std::string>& corpus) : corpus_(corpus) {}

    std::string next()
    {
        std::string bytes = any();
        for (std::size_t changes = 1 + below(4); changes > 0; --changes) change(bytes);
        return bytes;
    }

private:
    std::size_t below(std::size_t count) { return static_cast<std::size_t>(engine_() % count); }
    const std::string& any() { return corpus_[below(corpus_.size())]; }

    void change(std::string& bytes)
    {
        const std::size_t at = below(bytes.size() + 1), length = std::min(below(24), bytes.size() - at);
        switch (below(4)) {
        case 0: bytes.insert(at, 1, static_cast<char>(below(256))); break;
        case 1: bytes.erase(at, length); break;
        case 2: bytes.insert(at, bytes.substr(at, length)); break;
        default: {
            const std::string& other = any();
            bytes.replace(at, length, other, below(other.size() + 1), below(24));
        }
        }
    }

    const std::vector<std::string>& corpus_;
    std::mt19937_64 engine_{1};
};

}  // namespace

TEST_CASE("no input breaks a target")
{
    for (const Target& target : targets()) {
        const std::vector<std::string> corpus = corpus_of(target);
        REQUIRE(corpus.size() >= 2);
        for (const std::string& bytes : corpus) {
            INFO(target.name << " on\n" << bytes);
            CHECK(target.run(bytes) == "");
        }
        Mutation mutation(corpus);
        for (int i = 0; i < 2000; ++i) {
            const std::string bytes = mutation.next();
            const std::string wrong = target.run(bytes);
            INFO(target.name << " on\n" << bytes);
            if (!wrong.empty()) CHECK(wrong == "");
        }
    }
}

TEST_CASE("every sample makes all its papers")
{
    for (const std::string& bytes : corpus_of({"samples", nullptr, {"samples"}})) CHECK(try_documents(bytes, 1) == "");
}
