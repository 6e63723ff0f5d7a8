// A job as its file states it: nothing is converted or computed here.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/limits.hpp"
#include "shaftcut/trade/machine.hpp"
#include "shaftcut/trade/terms.hpp"
#include "shaftcut/words/angle.hpp"
#include "shaftcut/words/length.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

inline constexpr int most_speed = 10'000;  // min^-1, that a file may state

// A length as measured; its tolerance is the workshop's where the job states none. `place` is that of its attribute.
struct Measurement {
    Length length;
    std::optional<Length> plus_minus;
    Place place;
};

struct JobEnd {
    JointKind joint = JointKind::standard;
    std::optional<std::string> connection;  // a connection of the catalogue
    std::optional<std::string> onto;        // the connection of the stub it is coupled to
    std::optional<Lock> lock;
    std::optional<Device> device;
    Place place;
};

struct JobHalf {
    std::optional<Measurement> length;            // inner cross to the tube's free end
    std::optional<Measurement> guard;             // inner cross to the guard tube's free end
    std::optional<Measurement> shoulder;          // inner cross to the face that stops the other tube
    std::optional<Measurement> lubrication_hole;  // inner cross to the far edge of the hole
    std::vector<Feature> features;
};

struct JobShaft {
    std::optional<std::string> series;  // a series of the catalogue; nothing for a shaft of no known series
    Role role = Role::primary;
    std::optional<int> speed;  // min^-1
    End inner_tube = End::implement;
    std::optional<int> built;  // year
    std::optional<Shape> shape;      // of a shaft of no known series
    std::optional<Length> spacing;   // of a wide-angle joint of a shaft of no known series
    Measurement closed;
    std::optional<Reference> closed_reference;
    PerEach<End, JobEnd> ends;
    PerEach<Tube, JobHalf> halves;
    Place place;
};

// The end that carries this tube, and the tube that this end carries.
inline End end_of(const JobShaft& shaft, Tube tube) { return tube == Tube::inner ? shaft.inner_tube : other(shaft.inner_tube); }
inline Tube tube_on(const JobShaft& shaft, End end) { return shaft.inner_tube == end ? Tube::inner : Tube::outer; }

// What was measured, and the machine's geometry for what was not. The shortest and the longest with the PTO turning are
// always there, or the machine is and gives them.
struct JobFit {
    std::string tractor;  // may be empty
    Between between = Between::crosses;     // of the measured lengths
    std::optional<Reference> reference;
    std::optional<Measurement> shortest;
    PerEach<Range, std::optional<Measurement>> longest;
    PerEach<End, PerEach<Range, std::optional<Angle>>> angles;
    PerEach<End, Place> angle_places;
    std::optional<Machine> machine;
    Place place;
};

struct Job {
    std::string order;
    std::string date;  // YYYY-MM-DD, or empty
    std::string customer, machine, tractor;
    Units units = Units::mm;
    JobShaft shaft;
    std::vector<JobFit> fits;  // at least one
    Limits limits;
    Place place;
};

}  // namespace shaftcut
