#include "job_reader.hpp"

#include "circumstances_reader.hpp"
#include "fit_reader.hpp"
#include "order_number.hpp"
#include "shaft_reader.hpp"
#include "xml/element.hpp"

namespace shaftcut {
namespace {

// All that does not depend on the shaft.
Job read_head(Element& element)
{
    Job job;
    job.units = element.units();
    job.place = element.place();
    job.order = read_order(element.required("order"));
    job.date = read_date(element.optional("date"));
    element.at_most_one("for", [&](Element& child) { job = with_for(child, std::move(job)); });
    element.at_most_one("measured-by", [&](Element& child) { job = with_measured_by(child, std::move(job)); });
    return job;
}

Job read_root(Element& element, const Catalogue& catalogue)
{
    Job job = read_head(element);
    // A machine's geometry has to have room for it.
    const std::size_t faults_before = element.faults_so_far();
    element.one("shaft", [&](Element& shaft) { job.shaft = read_shaft(shaft, catalogue); });
    const FitShaft fit_shaft{job.shaft, series_of(job.shaft, catalogue), element.faults_so_far() == faults_before};
    element.at_least_one("fit", [&](Element& fit) { job.fits.push_back(read_fit(fit, fit_shaft, job.fits.size())); });
    element.at_most_one("limits", [&](Element& limits) { job = with_limits(limits, std::move(job)); });
    return job;
}

JobToChooseFor read_root_to_choose_for(Element& element, const Catalogue& catalogue)
{
    JobToChooseFor wanted;
    Job& job = wanted.job = read_head(element);
    element.one("shaft", [&](Element& shaft) {
        ShaftToChoose read = read_shaft_to_choose(shaft, catalogue);
        job.shaft = std::move(read.shaft);
        wanted.joint = read.joint;
    });
    element.at_least_one("fit", [&](Element& fit) { job.fits.push_back(read_fit(fit, {job.shaft, {}, false, true}, job.fits.size())); });
    element.at_most_one("limits", [&](Element& limits) { job = with_limits(limits, std::move(job)); });
    return wanted;
}

template <class T, class ReadRoot>
Read<T> read_as(const Source& source, const ReadRoot& read_root)
{
    Read<T> read;
    T value;
    read.faults = read_document(source, "job", [&](Element& element) { value = read_root(element); });
    if (read.faults.empty()) read.value = std::move(value);
    return read;
}

}  // namespace

Read<JobToChooseFor> read_job_to_choose_for(const Source& source, const Catalogue& catalogue)
{
    return read_as<JobToChooseFor>(source, [&](Element& element) { return read_root_to_choose_for(element, catalogue); });
}

Read<Job> read_unmeasured_job(const Source& source) { return read_as<Job>(source, read_head); }

Read<Job> read_job(const Source& source, const Catalogue& catalogue)
{
    return read_as<Job>(source, [&](Element& element) { return read_root(element, catalogue); });
}

}  // namespace shaftcut
