#include "job_reader.hpp"

#include "circumstances_reader.hpp"
#include "fit_reader.hpp"
#include "order_number.hpp"
#include "shaft_reader.hpp"
#include "xml/element.hpp"

namespace shaftcut {
namespace {

Job read_root(Element& element, const Catalogue& catalogue)
{
    Job job;
    job.units = element.units();
    job.place = element.place();
    job.order = read_order(element.required("order"));
    job.date = read_date(element.optional("date"));
    element.at_most_one("for", [&](Element& child) { job = with_for(child, std::move(job)); });
    element.at_most_one("measured-by", [&](Element& child) { job = with_measured_by(child, std::move(job)); });
    // A machine's geometry has to have room for it.
    const std::size_t faults_before = element.faults_so_far();
    element.one("shaft", [&](Element& shaft) { job.shaft = read_shaft(shaft, catalogue); });
    const FitShaft fit_shaft{job.shaft, series_of(job.shaft, catalogue), element.faults_so_far() == faults_before};
    element.at_least_one("fit", [&](Element& fit) { job.fits.push_back(read_fit(fit, fit_shaft, job.fits.size())); });
    element.at_most_one("limits", [&](Element& limits) { job = with_limits(limits, std::move(job)); });
    return job;
}

}  // namespace

Read<Job> read_job(const Source& source, const Catalogue& catalogue)
{
    Read<Job> read;
    Job job;
    read.faults = read_document(source, "job", [&](Element& element) { job = read_root(element, catalogue); });
    if (read.faults.empty()) read.value = std::move(job);
    return read;
}

}  // namespace shaftcut
