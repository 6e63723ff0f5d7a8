// The rooms: which may include which, and which outside library lives where. That a layer includes no header of a layer above
// it is the build's to refuse (src/CMakeLists.txt); every #include line is read here for what the build cannot say.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>

#include "support/catch.hpp"

namespace {

namespace fs = std::filesystem;

// From the ground up, and what each may include.
const std::vector<std::string> layers{"words", "trade", "reading", "wording", "documents", "engine", "bench", "commands"};
const std::map<std::string, std::set<std::string>> below{{"words", {}},
                                                         {"trade", {"words"}},
                                                         {"reading", {"words", "trade"}},
                                                         {"wording", {"words", "trade", "reading"}},
                                                         {"documents", {"words", "trade", "wording"}},
                                                         {"engine", {"words", "trade", "reading", "wording", "documents"}},
                                                         {"bench", {"words", "wording", "engine"}},
                                                         {"commands", {"words", "wording", "engine", "bench"}},
                                                         {"main", {"commands"}}};

// The rooms of a layer: a room may include what stands before it. "": the layer's own folder.
const std::map<std::string, std::vector<std::string>> rooms{
    {"trade", {"data", "hitch", "cut", "checks", "advice", "saw", "build", "identify", "order", "choose", "quote"}},
    {"reading", {"source", "xml", "table", "csv", "xlsx", "", "lists"}},
    {"wording", {"", "hitch", "checks", "advice", "saw", "build", "identify", "order", "choose", "quote", "reading", "drawing", "cut_sheet", "geometry_sheet", "work_order_book", "assembly", "saw_sheet", "saw_book", "form", "labels", "tag", "plate", "quote_sheet", "quote_book", "identify_sheet", "bench_card", "terminal", "engine", "bench", "commands"}},
    {"documents", {"page", "spreadsheet", "drawing", "cut_sheet", "geometry_sheet", "work_order_book", "assembly", "saw_sheet", "saw_book", "form", "labels", "tag", "plate", "quote_sheet", "quote_book", "identify_sheet", "bench_card", "json", "terminal", ""}},
    {"commands", {"files", "serving", "call", ""}},
};

struct Place {
    std::string layer, room;
};

struct Include {
    fs::path from;     // below the source folder: "src/trade/cut/cut.cpp"
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

// The files below a folder, as paths from it.
std::vector<fs::path> files_below(const fs::path& folder)
{
    std::vector<fs::path> files;
    if (!fs::exists(folder)) return files;
    for (const auto& entry : fs::recursive_directory_iterator(folder))
        if (entry.is_regular_file()) files.push_back(fs::relative(entry.path(), folder));
    return files;
}

std::vector<Include> all_includes()
{
    std::vector<Include> all;
    for (const char* folder : {"include", "src"})
        for (const fs::path& file : files_below(root() / folder)) {
            const auto found = includes_of(root() / folder / file);
            all.insert(all.end(), found.begin(), found.end());
        }
    return all;
}

// Of a path from src or include/shaftcut: "trade/cut/cut.hpp" lies in trade's cut, "words/length.hpp" in no room of words.
Place place_below(const fs::path& path)
{
    const std::vector<fs::path> parts(path.begin(), path.end());
    return {parts.size() < 2 ? "main" : parts.front().string(), parts.size() < 3 ? "" : parts[1].string()};
}

Place place_of(const fs::path& file)
{
    const bool is_public = *file.begin() == "include";
    return place_below(fs::relative(file, is_public ? "include/shaftcut" : "src"));
}

// Where a quoted name lies: a public header, or a private one under the root of some layer.
Place place_included(const std::string& what)
{
    const fs::path name(what);
    if (what.starts_with("shaftcut/")) return place_below(fs::relative(name, "shaftcut"));
    const auto found = std::find_if(layers.begin(), layers.end(), [&](const std::string& layer) { return fs::exists(root() / "src" / layer / name); });
    return found == layers.end() ? Place{"nowhere", ""} : place_below(fs::path(*found) / name);
}

std::size_t place_in(const std::vector<std::string>& order, const std::string& name)
{
    return static_cast<std::size_t>(std::find(order.begin(), order.end(), name) - order.begin());
}

bool may_include(const std::string& from, const std::string& to)
{
    return from == to || below.at(from).count(to) == 1;
}

// The files that include an outside header whose name begins so.
std::set<std::string> files_including(const std::string& start)
{
    std::set<std::string> files;
    for (const Include& include : all_includes())
        if (include.outside && include.what.starts_with(start)) files.insert(include.from.generic_string());
    return files;
}

// Each test that a comment names, as a path or by its name alone, with the file that names it.
std::vector<std::pair<std::string, std::string>> tests_named()
{
    static const std::regex form(R"(\btests/[a-z_/]*[a-z_]+\.(cpp|hpp|py)\b|\b[a-z_]+_test\b)");
    std::vector<std::pair<std::string, std::string>> named;
    for (const char* folder : {"include", "src"})
        for (const fs::path& file : files_below(root() / folder)) {
            std::ifstream stream(root() / folder / file);
            for (std::string line; std::getline(stream, line);) {
                const std::string comment = line.substr(std::min(line.find("//"), line.size()));
                for (auto at = std::sregex_iterator(comment.begin(), comment.end(), form); at != std::sregex_iterator(); ++at)
                    named.emplace_back(file.generic_string(), at->str());
            }
        }
    return named;
}

// A header of the standard library has neither a folder nor a suffix.
bool is_standard(const Include& include) { return include.outside && include.what.find_first_of("/.") == std::string::npos; }

}  // namespace

TEST_CASE("each layer includes only the layers below it")
{
    for (const Include& include : all_includes()) {
        if (include.outside) continue;
        const std::string from = place_of(include.from).layer, to = place_included(include.what).layer;
        INFO(include.from.generic_string() << " includes " << include.what << ", of " << to);
        REQUIRE((from == "main" || place_in(layers, from) < layers.size()));
        REQUIRE(place_in(layers, to) < layers.size());
        CHECK(may_include(from, to));
    }
}

TEST_CASE("each room includes only the rooms of its layer that stand before it")
{
    for (const Include& include : all_includes()) {
        if (include.outside) continue;
        const Place from = place_of(include.from), to = place_included(include.what);
        const auto order = rooms.find(from.layer);
        if (order == rooms.end() || from.layer != to.layer) continue;
        INFO(include.from.generic_string() << " includes " << include.what);
        REQUIRE(place_in(order->second, from.room) < order->second.size());
        CHECK(place_in(order->second, to.room) <= place_in(order->second, from.room));
    }
}

TEST_CASE("the page and the spreadsheet know no shaft")
{
    for (const Include& include : all_includes()) {
        const Place from = place_of(include.from);
        if (include.outside || from.layer != "documents" || (from.room != "page" && from.room != "spreadsheet")) continue;
        INFO(include.from.generic_string() << " includes " << include.what);
        CHECK((place_included(include.what).layer != "trade" || include.what == "shaftcut/trade/data/terms.hpp"));
    }
}

TEST_CASE("every folder of a layer is one of its rooms, and tests lie in the rooms of what they test")
{
    for (const std::string& layer : layers)
        for (const fs::path& below : {root() / "src" / layer, root() / "include/shaftcut" / layer, root() / "tests" / layer})
            for (const fs::path& file : files_below(below)) {
                if (file.extension() != ".cpp" && file.extension() != ".hpp") continue;
                const std::string room = file.parent_path().generic_string();
                const auto order = rooms.find(layer);
                INFO((below / file).generic_string());
                CHECK((room.empty() || (order != rooms.end() && place_in(order->second, room) < order->second.size())));
            }
}

TEST_CASE("words and trade use the standard library only, and neither streams nor clocks nor files")
{
    static const std::set<std::string> barred{"iostream", "istream", "ostream", "sstream", "fstream", "iomanip", "cstdio",  "chrono",
                                              "ctime",    "format",  "locale",  "clocale", "random",  "thread",  "filesystem"};
    for (const Include& include : all_includes()) {
        const std::string layer = place_of(include.from).layer;
        if (!include.outside || (layer != "words" && layer != "trade")) continue;
        INFO(include.from.generic_string() << " includes " << include.what);
        // The saw plan's linear programme is solved by a library: one file has its header.
        // How many processors there are, one file asks.
        if (include.from.stem() == "choose" && include.what == "thread") continue;
        const bool linear_programme = include.from.stem() == "saw_master" && include.what.starts_with("Clp");
        CHECK((is_standard(include) || linear_programme));
        CHECK(barred.count(include.what) == 0);
    }
}

TEST_CASE("below the commands nothing opens a file, loads a library, reads the environment or asks a clock")
{
    // But for the spreadsheets' library, which keeps the parts of a workbook in files.
    static const std::set<std::string> spreadsheet{"src/documents/spreadsheet/spreadsheet.cpp", "src/documents/spreadsheet/spreadsheet_parts.cpp",
                                                   "src/documents/spreadsheet/spreadsheet_parts.hpp"};
    static const std::regex outside(R"(\b(getenv|fopen|dlopen|mkdtemp|steady_clock|system_clock|high_resolution_clock|gettimeofday|clock_gettime|FT_New_Face|temp_directory_path)\b)");
    // Of <chrono> its clocks are barred by name; its calendar tells whether there is such a day.
    static const std::set<std::string> barred{"fstream", "iostream", "fcntl.h", "unistd.h", "dlfcn.h", "sys/stat.h", "ctime", "csignal"};
    for (const Include& include : all_includes()) {
        const std::string layer = place_of(include.from).layer;
        if (layer == "commands" || layer == "main" || spreadsheet.count(include.from.generic_string())) continue;
        INFO(include.from.generic_string() << " includes " << include.what);
        CHECK(barred.count(include.what) == 0);
    }
    int read = 0;
    for (const char* layer : {"words", "trade", "reading", "wording", "documents", "engine", "bench"})
        for (const fs::path& file : files_below(root() / "src" / layer)) {
            const fs::path path = fs::path("src") / layer / file;
            if (spreadsheet.count(path.generic_string())) continue;
            std::ifstream stream(root() / path);
            const std::string text{std::istreambuf_iterator<char>(stream), {}};
            INFO(path.generic_string());
            CHECK_FALSE(std::regex_search(text, outside));
            ++read;
        }
    CHECK(read > 150);
}

TEST_CASE("each outside library is in the room where it belongs, and but for two in one file")
{
    // A workbook is zipped XML: who reads one unpacks it and looks into it.
    static const std::map<std::string, std::vector<std::string>> belongs{
        {"pugixml", {"src/reading/xml/", "src/reading/xlsx/"}}, {"boost/", {"src/commands/"}}, {"boost/beast/", {"src/commands/serving/"}}, {"cairo", {"src/documents/page/"}}, {"ft2build", {"src/documents/page/"}},
        {"qrencode", {"src/documents/page/"}}, {"xlsxwriter", {"src/documents/spreadsheet/"}}, {"zlib", {"src/documents/spreadsheet/", "src/reading/xlsx/"}},
        {"sodium", {"src/bench/"}}, {"nlohmann/", {"src/documents/json/"}}};
    for (const auto& [library, in_rooms] : belongs) {
        const auto files = files_including(library);
        INFO(library);
        CHECK(!files.empty());
        for (const auto& file : files) CHECK(std::any_of(in_rooms.begin(), in_rooms.end(), [&](const std::string& room) { return file.starts_with(room); }));
        for (const std::string& room : in_rooms) {
            const auto count = std::count_if(files.begin(), files.end(), [&](const std::string& file) { return file.starts_with(room); });
            CHECK((count == 1 || library.starts_with("boost/") || library == "nlohmann/"));
        }
    }
}

TEST_CASE("a public header includes public headers only, and lies in the room of its source")
{
    // Data without rules needs no source.
    static const std::set<std::string> only_data{"terms", "stock", "job", "build_order", "shaft", "paper", "document", "machine", "vector", "confirmation", "bounds", "page",
                                                 "source", "font_files", "wishes", "guards", "findings", "terminal", "half_figure", "measured_after_cut", "firm", "expected", "series_figure", "prices", "quote", "measures", "bench_card"};
    for (const fs::path& path : files_below(root() / "include/shaftcut")) {
        INFO(path);
        for (const Include& include : includes_of(root() / "include/shaftcut" / path)) CHECK((is_standard(include) || include.what.starts_with("shaftcut/")));
        CHECK_FALSE(fs::exists(root() / "src" / path));
        if (only_data.count(path.stem().string()) == 0) CHECK(fs::exists(root() / "src" / fs::path(path).replace_extension(".cpp")));
    }
}

TEST_CASE("every test that a comment of the program names is there")
{
    std::set<std::string> there;
    for (const fs::path& file : files_below(root() / "tests")) there.insert(file.stem().string());
    const auto named = tests_named();
    for (const auto& [file, name] : named) {
        INFO(file << " names " << name);
        CHECK((name.starts_with("tests/") ? fs::exists(root() / name) : there.count(name) == 1));
    }
    CHECK(named.size() > 20);
}
