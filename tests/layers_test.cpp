// The layers: words, then trade, then reading and documents, then the engine, then commands. Every #include line of the program is read.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>

#include "support/catch.hpp"

namespace {

namespace fs = std::filesystem;

struct Include {
    fs::path from;     // below the source folder: "src/trade/cut.cpp"
    std::string what;  // as between the brackets or quotes
    bool outside;      // in angle brackets
};

const fs::path& root()
{
    static const fs::path folder = SHAFTCUT_SOURCE_DIR;
    return folder;
}

std::vector<Include> includes_of(const fs::path& file)
{
    static const std::regex line_form(R"(^\s*#\s*include\s*([<"])([^>"]+)[>"].*)");
    std::vector<Include> found;
    std::ifstream stream(file);
    std::smatch match;
    for (std::string line; std::getline(stream, line);)
        if (std::regex_match(line, match, line_form)) found.push_back({fs::relative(file, root()), match[2], match[1] == "<"});
    return found;
}

std::vector<Include> all_includes()
{
    std::vector<Include> all;
    for (const char* folder : {"include", "src"})
        for (const auto& entry : fs::recursive_directory_iterator(root() / folder))
            if (entry.is_regular_file()) {
                const auto found = includes_of(entry.path());
                all.insert(all.end(), found.begin(), found.end());
            }
    return all;
}

// "trade" of src/trade/cut.cpp, include/shaftcut/trade/cut.hpp and shaftcut/trade/cut.hpp; "main" of src/main.cpp.
std::string layer_of(const fs::path& path)
{
    const fs::path folder = path.parent_path().filename();
    return folder == "src" ? "main" : folder.string();
}

// A quoted name without a folder is a private header beside its file.
std::string layer_included(const Include& include)
{
    const fs::path what(include.what);
    return what.has_parent_path() ? layer_of(what) : layer_of(include.from);
}

// The trade's order: a file may include what stands on its own line or before it.
const std::vector<std::set<std::string>> trade_order{
    {"terms"}, {"general_tolerance"}, {"bounds"}, {"slip_limits"}, {"rounding"}, {"limits"}, {"stock"}, {"catalogue"}, {"machine"}, {"machine_words"}, {"machine_dimensions"}, {"job"}, {"shaft_title"}, {"build_order"}, {"shaft"}, {"vector"}, {"joint"}, {"placement"}, {"shaft_series"}, {"hitch_shaft"},
    {"quadratic"}, {"extremes"}, {"influence"}, {"hitch_problems"}, {"hitch"}, {"hitch_advice"}, {"hitch_curve"}, {"datum", "deciding_fit"}, {"geometry_words"}, {"machine_view"}, {"machine_extremes"}, {"stops"}, {"cut"}, {"build"}, {"parts"},
    {"checks", "check_rules", "check_parts", "checks_angles", "checks_bounds", "checks_consistency", "checks_fittings", "checks_guards", "checks_lengths", "checks_stops", "checks_use", "consistency_parts", "confirmation"},
    {"saw", "saw_bound_table", "saw_branch", "saw_cases", "saw_certificate", "saw_check_task", "saw_columns", "saw_finish", "saw_greedy", "saw_knapsack", "saw_master", "saw_mix",
     "saw_model", "saw_packer", "saw_search", "saw_tree"},
    {"saw_order"}, {"identify"}, {"quote"}, {"advice", "advice_parts", "advice_lengths", "advice_fittings", "advice_geometry"},
    {"operations", "build_plan", "build_advice", "build_bars", "build_notes", "build_trial", "build_use"}, {"build_inputs"}, {"batch"}, {"work_order", "instructions", "instructions_machine"}};

std::size_t place_in_trade(const fs::path& path)
{
    const auto found = std::find_if(trade_order.begin(), trade_order.end(), [&](const auto& line) { return line.count(path.stem().string()); });
    return static_cast<std::size_t>(found - trade_order.begin());
}

bool begins_with(const std::string& text, const std::string& start) { return text.rfind(start, 0) == 0; }

// The files that include an outside header whose name begins so.
std::set<std::string> files_including(const std::string& start)
{
    std::set<std::string> files;
    for (const Include& include : all_includes())
        if (include.outside && begins_with(include.what, start)) files.insert(include.from.generic_string());
    return files;
}

// Each test that a comment names, as a path or by its name alone, with the file that names it.
std::vector<std::pair<std::string, std::string>> tests_named()
{
    static const std::regex form(R"(\btests/[a-z_/]*[a-z_]+\.(cpp|hpp|py)\b|\b[a-z_]+_test\b)");
    std::vector<std::pair<std::string, std::string>> named;
    for (const char* folder : {"include", "src"})
        for (const auto& entry : fs::recursive_directory_iterator(root() / folder)) {
            std::ifstream stream(entry.path());
            for (std::string line; std::getline(stream, line);) {
                const std::string comment = line.substr(std::min(line.find("//"), line.size()));
                for (auto at = std::sregex_iterator(comment.begin(), comment.end(), form); at != std::sregex_iterator(); ++at)
                    named.emplace_back(fs::relative(entry.path(), root()).generic_string(), at->str());
            }
        }
    return named;
}

// A header of the standard library has neither a folder nor a suffix.
bool is_standard(const Include& include) { return include.outside && include.what.find_first_of("/.") == std::string::npos; }

}  // namespace

TEST_CASE("each layer includes only the layers below it")
{
    const std::map<std::string, std::set<std::string>> below{{"words", {"words"}},
                                                             {"trade", {"words", "trade"}},
                                                             {"reading", {"words", "trade", "reading"}},
                                                             {"documents", {"words", "trade", "documents"}},
                                                             {"engine", {"words", "trade", "reading", "documents", "engine"}},
                                                             {"commands", {"words", "engine", "commands"}},
                                                             {"main", {"commands"}}};
    int seen = 0;
    for (const Include& include : all_includes()) {
        if (include.outside) continue;
        ++seen;
        INFO(include.from.generic_string() << " includes " << include.what);
        REQUIRE(below.count(layer_of(include.from)) == 1);
        CHECK(below.at(layer_of(include.from)).count(layer_included(include)) == 1);
    }
    CHECK(seen > 50);
}

TEST_CASE("in the trade layer a file includes only what comes before it")
{
    for (const Include& include : all_includes()) {
        if (include.outside || layer_of(include.from) != "trade" || layer_included(include) != "trade") continue;
        INFO(include.from.generic_string() << " includes " << include.what << "; a new subject needs its line in the trade's order");
        CHECK(place_in_trade(include.from) < trade_order.size());
        CHECK(place_in_trade(include.what) <= place_in_trade(include.from));
    }
}

TEST_CASE("words and trade use the standard library only, and neither streams nor clocks nor files")
{
    static const std::set<std::string> barred{"iostream", "istream", "ostream", "sstream", "fstream", "iomanip", "cstdio",  "chrono",
                                              "ctime",    "format",  "locale",  "clocale", "random",  "thread",  "filesystem"};
    for (const Include& include : all_includes()) {
        if (!include.outside || (layer_of(include.from) != "words" && layer_of(include.from) != "trade")) continue;
        INFO(include.from.generic_string() << " includes " << include.what);
        // The saw plan's linear programme is solved by a library, whose functions are handed in: one file has its header.
        const bool linear_programme = include.from.stem() == "saw_master" && begins_with(include.what, "Clp");
        CHECK((is_standard(include) || linear_programme));
        CHECK(barred.count(include.what) == 0);
    }
}

TEST_CASE("below the commands nothing opens a file, loads a library, reads the environment or asks a clock")
{
    // But for the spreadsheets' library, which keeps the parts of a workbook in files.
    static const std::set<std::string> spreadsheet{"src/documents/spreadsheet.cpp", "src/documents/spreadsheet_parts.cpp", "src/documents/spreadsheet_parts.hpp"};
    static const std::regex outside(R"(\b(getenv|fopen|dlopen|mkdtemp|steady_clock|system_clock|high_resolution_clock|gettimeofday|clock_gettime|FT_New_Face|temp_directory_path)\b)");
    static const std::set<std::string> barred{"fstream", "iostream", "fcntl.h", "unistd.h", "dlfcn.h", "sys/stat.h", "ctime", "csignal"};
    for (const Include& include : all_includes()) {
        if (layer_of(include.from) == "commands" || layer_of(include.from) == "main" || spreadsheet.count(include.from.generic_string())) continue;
        INFO(include.from.generic_string() << " includes " << include.what);
        CHECK(barred.count(include.what) == 0);
    }
    int read = 0;
    for (const char* layer : {"words", "trade", "reading", "documents", "engine"})
        for (const auto& entry : fs::directory_iterator(root() / "src" / layer)) {
            const std::string name = fs::relative(entry.path(), root()).generic_string();
            if (spreadsheet.count(name)) continue;
            std::ifstream stream(entry.path());
            const std::string text{std::istreambuf_iterator<char>(stream), {}};
            INFO(name);
            CHECK_FALSE(std::regex_search(text, outside));
            ++read;
        }
    CHECK(read > 150);
}

TEST_CASE("each outside library is where it belongs, and in one file")
{
    for (const auto& file : files_including("pugixml")) CHECK(begins_with(file, "src/reading/"));
    for (const auto& file : files_including("boost/")) CHECK(layer_of(file) == "commands");
    for (const char* library : {"cairo", "xlsxwriter", "qrencode", "ft2build", "nlohmann/"}) {
        const auto files = files_including(library);
        INFO(library);
        CHECK(files.size() <= 1);
        for (const auto& file : files) CHECK(begins_with(file, "src/documents/"));
    }
}

TEST_CASE("public headers and sources are one to one by name")
{
    for (const auto& entry : fs::recursive_directory_iterator(root() / "src")) {
        const fs::path path = fs::relative(entry.path(), root() / "src");
        if (path.extension() != ".hpp") continue;
        INFO(path << " is private: no public header may have its name");
        CHECK_FALSE(fs::exists(root() / "include/shaftcut" / path));
    }
    // Data without rules needs no source; every other public header has its source in the same layer.
    static const std::set<std::string> only_data{"bounds", "check_rules", "slip_limits", "terms", "stock", "job", "build_order", "shaft", "paper", "machine", "machine_words", "vector", "page", "read", "each_once", "source", "font_files", "document", "wishes"};
    for (const auto& entry : fs::recursive_directory_iterator(root() / "include/shaftcut")) {
        const fs::path path = fs::relative(entry.path(), root() / "include/shaftcut");
        if (path.extension() != ".hpp" || only_data.count(path.stem().string())) continue;
        if (!fs::exists(root() / "src" / path.parent_path())) continue;
        INFO(path);
        CHECK(fs::exists(root() / "src" / fs::path(path).replace_extension(".cpp")));
    }
}

TEST_CASE("every test that a comment of the program names is there")
{
    std::set<std::string> there;
    for (const auto& entry : fs::recursive_directory_iterator(root() / "tests")) there.insert(entry.path().stem().string());
    const auto named = tests_named();
    for (const auto& [file, name] : named) {
        INFO(file << " names " << name);
        CHECK((name.starts_with("tests/") ? fs::exists(root() / name) : there.count(name) == 1));
    }
    CHECK(named.size() > 20);
}
