// Slips of the pen: every length of every sample mistyped in every way, and shafts altered where no figure can show it. What
// became of them stands in docs/slips.md, which is held to what is counted here; SHAFTCUT_WRITE_SLIPS=1 writes it anew.
#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <set>

#include "catalogue_reader.hpp"
#include "commands/program.hpp"
#include "job_reader.hpp"
#include "support/catch.hpp"
#include "support/compare_answers.hpp"
#include "support/drawn/mistypings.hpp"
#include "workshop_reader.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

constexpr std::uint64_t altered_shafts = 20'000;

struct Demonstration {
    Catalogue catalogue = read_catalogue({"series.xml", read_all(source_folder + "/config/series.xml")}).value.value();
    Workshop workshop = read_workshop({"workshop.xml", read_all(source_folder + "/config/workshop.xml")}).value.value();
    std::optional<Job> job(const std::string& bytes) const { return read_job({"job.xml", bytes}, catalogue).value; }
};

bool holds_machine(const std::string& xml) { return xml.find("<trailed") != std::string::npos || xml.find("<mounted") != std::string::npos; }

std::vector<std::filesystem::path> samples()
{
    std::vector<std::filesystem::path> found;
    for (const auto& entry : std::filesystem::directory_iterator(source_folder + "/samples"))
        if (entry.path().extension() == ".xml") found.push_back(entry.path());
    std::sort(found.begin(), found.end());
    return found;
}

// A machine's extremes take a while to find: of samples that hold one, every twentieth.
const Mistyped& all_mistyped()
{
    static const Mistyped counted = [] {
        const Demonstration with;
        Mistyped found;
        for (const auto& sample : samples()) {
            const std::string xml = read_all(sample.string());
            mistype_all(found, sample.filename().string(), xml, holds_machine(xml) ? 20 : 1, [&](const std::string& bytes) -> std::optional<Seen> {
                const auto job = with.job(bytes);
                return job ? std::optional(seen_of(work_up(*job, with.catalogue, with.workshop, job->units))) : std::nullopt;
            });
        }
        return found;
    }();
    return counted;
}

std::string row(const std::vector<std::string>& cells)
{
    std::string text = "|";
    for (const std::string& cell : cells) text += " " + cell + " |";
    return text + "\n";
}

std::string row_of(const std::string& kind, const Fate& fate)
{
    const std::string most = fate.silent ? figure(Length::micrometres(fate.too_long), Units::mm, Toward::up) : "–";
    std::vector<std::string> cells{kind};
    for (const int count : {fate.all, fate.refused, fate.unchanged, fate.asked, fate.warned, fate.silent}) cells.push_back(std::to_string(count));
    cells.push_back(most);
    cells.push_back(std::to_string(fate.dangerous));
    return row(cells);
}

std::string mistyped_table()
{
    const Mistyped& counted = all_mistyped();
    std::string text = row({"figure", "mistyped", "refused", "no cut changed", "asked for", "warned", "in silence", "tube too long in silence, mm", "by more than the clearance"}) +
                       row({"---", "---", "---", "---", "---", "---", "---", "---", "---"});
    Fate sum;
    for (const auto& [kind, fate] : counted.of_kind) {
        text += row_of(kind, fate);
        sum += fate;
    }
    return text + row_of("all", sum) + "\nIn samples that are refused, " + std::to_string(counted.in_refused) + " mistypings: " + std::to_string(counted.now_answered) +
           " of them are answered with a cut.\n";
}

// What became of shafts that are altered in one way.
struct Altered {
    int shafts = 0, refused = 0, stopped = 0, below_stated = 0, lost = 0;
    Um most = 0;  // by which a true clearance lies below the stated worst
};

void count(Altered& found, const Measured& drawn, const Promise& promise)
{
    ++found.shafts;
    if (promise.verdict == Verdict::refused) ++found.refused;
    else if (confirmation_stops(drawn.shaft, promise)) ++found.stopped;
    else if (const auto worst = promise.worst_of(CheckId::closing_clearance)) {
        const Um clearance = saw(drawn.shaft, promise).clearance;
        found.below_stated += clearance < *worst - 10 ? 1 : 0;
        found.lost += clearance < 0 ? 1 : 0;
        found.most = std::max(found.most, *worst - clearance);
    }
}

std::string row_of(const std::string& what, const Altered& found)
{
    return row({what, std::to_string(found.shafts), std::to_string(found.refused), std::to_string(found.stopped), std::to_string(found.below_stated),
                figure(Length::micrometres(found.most), Units::mm, Toward::up), std::to_string(found.lost)});
}

std::string altered_table()
{
    Altered stops, halves;
    for (std::uint64_t number = 0; number < altered_shafts; ++number) {
        const Measured drawn = measured_shaft(number, Draw::altered);
        if (!drawn.stop_altered && !drawn.half_altered) continue;
        const World& world = drawn.world;
        count(drawn.stop_altered ? stops : halves, drawn, promise_of(work_up(world.job, world.catalogue, world.workshop, world.units)));
    }
    return row({"altered", "shafts", "refused", "stopped by what is confirmed", "clearance below the stated worst", "by at most, mm", "no clearance left"}) +
           row({"---", "---", "---", "---", "---", "---", "---"}) + row_of("a stop", stops) + row_of("a half that was left out", halves);
}

const std::string page_path = source_folder + "/docs/slips.md";

// The page with `text` between the marks that name it.
std::string with_figures(const std::string& page, const std::string& name, const std::string& text)
{
    const std::string begin = "<!-- counted: " + name + " -->\n", end = "<!-- end of " + name + " -->";
    const std::size_t from = page.find(begin), to = page.find(end);
    REQUIRE(from != std::string::npos);
    REQUIRE(to != std::string::npos);
    return page.substr(0, from + begin.size()) + text + page.substr(to);
}

}  // namespace

TEST_CASE("the page of slips holds what is counted")
{
    const std::string page = read_all(page_path);
    const std::string counted = with_figures(with_figures(page, "mistyped", mistyped_table()), "altered", altered_table());
    if (std::getenv("SHAFTCUT_WRITE_SLIPS")) std::ofstream(page_path, std::ios::binary) << counted;
    CHECK(read_all(page_path) == counted);
}

TEST_CASE("no mistyped length leaves a tube too long in silence where another figure could tell")
{
    const std::set<std::string> alone{"shortest", "machine's geometry", "closing clearance"};
    for (const auto& [kind, fate] : all_mistyped().of_kind) {
        INFO(kind);
        CHECK((fate.dangerous == 0 || alone.count(kind) == 1));
        CHECK(fate.all == fate.refused + fate.unchanged + fate.asked + fate.warned + fate.silent);
    }
    for (const char* kind : {"closed length", "half", "guard half", "shortest", "longest, turning"}) CHECK(all_mistyped().of_kind.at(kind).all > 200);
}

TEST_CASE("the program and the second implementation agree on every mistyped length of the samples")
{
    const Demonstration with;
    int disagreements = 0;
    for (const auto& sample : samples()) {
        const std::string xml = read_all(sample.string());
        if (holds_machine(xml)) continue;
        for (const TypedLength& one : typed_lengths(xml))
            for (const std::string& typed : mistypings(one.text)) {
                const auto job = with.job(std::string(xml).replace(one.begin, one.text.size(), typed));
                const std::string found = job ? differences({*job, with.catalogue, with.workshop, job->units}) : "";
                if (found.empty() || ++disagreements > 10) continue;
                UNSCOPED_INFO(sample.filename().string() << ": " << one.kind << " " << one.text << " as " << typed << "\n" << found);
            }
    }
    CHECK(disagreements == 0);
}
