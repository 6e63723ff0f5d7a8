// Jobs to choose a shaft for, of the demo's catalogue.
#pragma once

#include <fmt/format.h>

#include <algorithm>
#include <string>

#include "reading/support.hpp"
#include "shaftcut/trade/choose/choose.hpp"
#include "support/jobs.hpp"
#include "workshop_reader.hpp"

namespace shaftcut::test::choosing {

inline const Catalogue& demo() { return reading_test::catalogue(); }

inline const Workshop& demo_workshop()
{
    static const auto read = read_workshop({"workshop.xml", reading_test::bytes_of(reading_test::project / "config/workshop.xml")});
    return *read.value;
}

// What a job says besides its shaft, and its ends without their joints.
struct JobText {
    std::string before, fits;
    PerEach<End, std::string> joint;
    std::string others = R"(connection="1-3/8-6" onto="1-3/8-6" device="none")";
};

inline std::string end_text(const JobText& asked, End end, const std::string& joint) { return fmt::format(R"(<end side="{}" joint="{}" {}/>)", to_word(end), joint, asked.others); }

inline JobToChooseFor wanted_of(const JobText& asked)
{
    const std::string shaft = R"(<shaft role="primary" speed="540">)" + end_text(asked, End::tractor, asked.joint[End::tractor]) + end_text(asked, End::implement, asked.joint[End::implement]) + "</shaft>";
    const auto read = read_job_to_choose_for({"choose.xml", asked.before + shaft + asked.fits + "</job>"}, demo());
    INFO(reading_test::lines_of(read.faults));
    REQUIRE(read.value);
    return *read.value;
}

inline Choices chosen(const JobText& asked) { return choose(wanted_of(asked), demo(), demo_workshop(), Units::mm); }

inline const std::string plain_before = R"(<job order="c" units="mm"><for power="12"/>)";

inline JobText measured_fit(double shortest, double working, double turning, double standing)
{
    JobText asked{plain_before, {}, {}};
    asked.fits = fmt::format(R"(<fit between="grooves"><shortest length="{}"/><longest when="working" length="{}"/><longest when="turning" length="{}"/><longest when="standing" length="{}"/>)"
                             R"(<angle side="tractor" working="12" turning="30" standing="60"/><angle side="implement" working="8" turning="15" standing="20"/></fit>)",
                             shortest, working, turning, standing);
    asked.joint[End::tractor] = asked.joint[End::implement] = "either";
    return asked;
}

inline JobText usual() { return measured_fit(880, 940, 970, 1000); }

inline JobText machine_fit()
{
    JobText asked{plain_before, {}, {}};
    asked.fits = R"(<fit><mounted pto-height="625" lower-pivot-behind="-220" lower-pivot-height="495" lower-link="925" top-pivot-behind="-160" top-pivot-height="1055" top-link="815" mast="510")"
                 R"( input-behind="10" input-above="85" input-tilt="0"><working lowest="500" highest="600"/><turning lowest="400" highest="750"/><standing lowest="220" highest="980"/></mounted></fit>)";
    asked.joint[End::tractor] = asked.joint[End::implement] = "either";
    return asked;
}

inline const Choice& choice_at(const Choices& choices, const std::string& series, Length closed)
{
    const auto found = std::find_if(choices.choices.begin(), choices.choices.end(), [&](const Choice& choice) { return choice.series == series && choice.closed == closed; });
    REQUIRE(found != choices.choices.end());
    return *found;
}

}  // namespace shaftcut::test::choosing
