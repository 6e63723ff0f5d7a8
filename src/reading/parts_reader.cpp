#include "parts_reader.hpp"

#include <algorithm>


namespace shaftcut {
namespace {

constexpr int most_in_one_place = 99;

// What a part may depend on: a tube's pin is no matter of the lock.
struct Narrowing {
    bool tube = false, joint = false, connection = false, lock = false, device = false, replaces = false;
};

Narrowing narrowing_of(PartKind kind)
{
    Narrowing by;
    by.tube = kind == PartKind::tube_yoke || kind == PartKind::tube || kind == PartKind::pin || kind == PartKind::guard_tube || kind == PartKind::guard_bearing ||
              kind == PartKind::chain;
    by.joint = kind == PartKind::connection_yoke || kind == PartKind::tube_yoke || kind == PartKind::guard_bearing || kind == PartKind::device;
    by.connection = kind == PartKind::connection_yoke || kind == PartKind::device;
    by.lock = kind == PartKind::connection_yoke;
    by.device = kind == PartKind::device;
    by.replaces = kind == PartKind::device;
    return by;
}

// What a part states, beside for what it is.
struct Narrowed {
    Attribute tube, joint, connection, lock, device, replaces;
};

void check_narrowing(PartKind kind, const Narrowed& stated)
{
    const Narrowing by = narrowing_of(kind);
    const auto check = [&](const Attribute& attribute, bool depends) {
        if (!depends && attribute.given())
            attribute.fault(PartIndependent{kind, attribute.called()});
    };
    check(stated.tube, by.tube);
    check(stated.joint, by.joint);
    check(stated.connection, by.connection);
    check(stated.lock, by.lock);
    check(stated.device, by.device);
    check(stated.replaces, by.replaces);
}

bool same_place(const CataloguePart& a, const CataloguePart& b)
{
    return a.kind == b.kind && a.tube == b.tube && a.joint == b.joint && a.connection == b.connection && a.lock == b.lock && a.device == b.device;
}

}  // namespace

std::vector<CataloguePart> read_parts(Element& series, const KnownNames& connections)
{
    std::vector<CataloguePart> parts;
    series.each("part", [&](Element& element) {
        CataloguePart part;
        const auto kind = element.required("for").word<PartKind>();
        part.name = element.required("name").name().value_or("");
        part.count = element.optional("count").whole(1, most_in_one_place).value_or(1);
        const Narrowed stated{element.optional("tube"), element.optional("joint"), element.optional("connection"), element.optional("lock"), element.optional("device"), element.optional("replaces")};
        part.tube = stated.tube.word<Tube>();
        part.joint = stated.joint.word<JointKind>();
        part.connection = stated.connection.one_of(connections);
        part.lock = stated.lock.word<Lock>();
        part.device = stated.device.word<Device>();
        part.replaces = stated.replaces.word<Replaces>();
        if (!kind) return;
        part.kind = *kind;
        check_narrowing(*kind, stated);
        if (std::any_of(parts.begin(), parts.end(), [&](const CataloguePart& earlier) { return same_place(earlier, part); }))
            element.fault(SecondNamed{SecondOf::part, to_word(*kind)});
        parts.push_back(std::move(part));
    });
    return parts;
}

}  // namespace shaftcut
