#include "limits_reader.hpp"

namespace shaftcut {
namespace {

std::optional<LimitValue> whole_value(std::optional<std::int64_t> count)
{
    return count ? std::optional(LimitValue{*count, 1}) : std::nullopt;
}

std::optional<LimitValue> value_of(const Attribute& attribute, LimitKind kind)
{
    switch (kind) {
    case LimitKind::length:
        if (const auto length = attribute.length()) return LimitValue{length->um(), 1};
        return std::nullopt;
    case LimitKind::angle:
        if (const auto angle = attribute.angle()) return LimitValue{angle->mdeg(), 1};
        return std::nullopt;
    case LimitKind::fraction: return attribute.fraction();
    case LimitKind::percent: break;
    }
    return whole_value(attribute.percent());
}

}  // namespace

Limits read_limits(Element& element)
{
    Limits limits;
    for (const LimitRow& row : limit_rows()) {
        const Attribute attribute = element.optional(row.name);
        if (const auto value = value_of(attribute, row.kind)) limits[row.limit] = LimitSetting{*value, attribute.place()};
    }
    return limits;
}

}  // namespace shaftcut
