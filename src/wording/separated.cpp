#include "separated.hpp"

namespace shaftcut {

std::string separated(const std::vector<std::string>& parts, std::string_view by)
{
    std::string all;
    for (const std::string& part : parts) all.append(all.empty() ? "" : by).append(part);
    return all;
}

}  // namespace shaftcut
