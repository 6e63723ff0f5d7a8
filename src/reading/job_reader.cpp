#include "shaftcut/reading/job_reader.hpp"

#include <algorithm>
#include <chrono>

#include "shaftcut/reading/element.hpp"
#include "shaftcut/reading/fit_reader.hpp"
#include "shaftcut/reading/limits_reader.hpp"
#include "shaftcut/reading/shaft_reader.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t most_order = 40;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

bool may_stand_in_order(char c)
{
    return is_digit(c) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '.' || c == '_' || c == '-';
}

bool is_order(std::string_view text)
{
    return !text.empty() && text.size() <= most_order && text.front() != '.' && std::all_of(text.begin(), text.end(), may_stand_in_order);
}

// CON.json opens the console instead of a file on Windows, whatever stands after the first dot and in whatever case
// ("Naming Files, Paths, and Namespaces", Microsoft, from memory): papers on a shared folder or a stick must open anywhere.
bool is_device(std::string_view order)
{
    std::string stem(order.substr(0, order.find('.')));
    for (char& c : stem) c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    if (stem.size() == 4 && is_digit(stem.back())) stem.back() = '#';
    return stem == "CON" || stem == "PRN" || stem == "AUX" || stem == "NUL" || stem == "COM#" || stem == "LPT#";
}

std::string read_order(const Attribute& attribute)
{
    if (!attribute.given()) return {};
    if (is_device(attribute.value()))
        attribute.fault("order " + quoted(attribute.value()) + " names a device, not a file, on Windows", "add a letter, digit, \"_\" or \"-\" before any dot");
    if (!is_order(attribute.value()))
        attribute.fault("order " + quoted(attribute.value()) + " cannot name files",
                        "write 1 to 40 letters, digits, \".\", \"_\" or \"-\", not beginning with \".\"");
    return attribute.value();
}

bool is_date(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
    const auto number = [&](std::size_t from, std::size_t count) {
        int value = 0;
        for (const char c : text.substr(from, count)) value = is_digit(c) && value >= 0 ? value * 10 + (c - '0') : -1;
        return value;
    };
    const int year = number(0, 4), month = number(5, 2), day = number(8, 2);
    if (year <= 0 || month < 0 || day < 0) return false;
    return (std::chrono::year(year) / month / day).ok();
}

std::string read_date(const Attribute& attribute)
{
    if (!attribute.given()) return {};
    if (!is_date(attribute.value()))
        attribute.fault("date " + quoted(attribute.value()) + " is no day of the calendar", "write YYYY-MM-DD, such as 2026-11-24");
    return attribute.value();
}

Job read_root(Element& element, const Catalogue& catalogue)
{
    Job job;
    job.units = element.units();
    job.place = element.place();
    job.order = read_order(element.required("order"));
    job.date = read_date(element.optional("date"));
    element.at_most_one("for", [&](Element& child) {
        job.customer = child.optional("customer").text().value_or("");
        job.machine = child.optional("machine").text().value_or("");
        job.tractor = child.optional("tractor").text().value_or("");
    });
    // A machine's geometry has to have room for it.
    const std::size_t faults_before = element.faults_so_far();
    element.one("shaft", [&](Element& shaft) { job.shaft = read_shaft(shaft, catalogue); });
    const FitShaft fit_shaft{job.shaft, job.shaft.series ? find_series(catalogue, *job.shaft.series) : nullptr,
                             element.faults_so_far() == faults_before};
    element.at_least_one("fit", [&](Element& fit) { job.fits.push_back(read_fit(fit, fit_shaft)); });
    element.at_most_one("limits", [&](Element& limits) { job.limits = read_limits(limits); });
    return job;
}

}  // namespace

Read<Job> read_job(const Source& source, const Catalogue& catalogue)
{
    Read<Job> read;
    Job job;
    read.problems = read_document(source, "job", [&](Element& element) { job = read_root(element, catalogue); });
    if (read.problems.empty()) read.value = std::move(job);
    return read;
}

}  // namespace shaftcut
