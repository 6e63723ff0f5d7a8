// Who stands behind a paper: the firm's name, and how it is reached and known to the authorities. What is not stated is empty.
#pragma once

#include <string>

namespace shaftcut {

struct Firm {
    std::string name, address, phone, mail;
    std::string tax_number, register_number;
};

}  // namespace shaftcut
