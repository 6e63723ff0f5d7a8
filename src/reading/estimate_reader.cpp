#include "estimate_reader.hpp"

#include "circumstances_reader.hpp"
#include "order_number.hpp"
#include "xml/element.hpp"

namespace shaftcut {
namespace {

Job read_root(Element& element)
{
    Job job;
    job.units = element.units();
    job.place = element.place();
    job.order = read_order(element.required("order"));
    job.date = read_date(element.optional("date"));
    element.at_most_one("for", [&](Element& child) { job = with_for(child, std::move(job)); });
    return job;
}

}  // namespace

Read<Job> read_unmeasured_job(const Source& source)
{
    Read<Job> read;
    Job job;
    read.faults = read_document(source, "job", [&](Element& element) { job = read_root(element); });
    if (read.faults.empty()) read.value = std::move(job);
    return read;
}

}  // namespace shaftcut
