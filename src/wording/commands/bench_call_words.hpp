// What the command of the bench page says on the terminal.
#pragma once

#include <string>
#include <system_error>

#include "wording.hpp"

namespace shaftcut {

// What is wrong with the call.
std::string no_port(const std::string& value, const Wording& w);
std::string no_network_address(const std::string& value, const Wording& w);
std::string no_printer_name(const std::string& value, const Wording& w);
std::string no_tablet_number(const std::string& value, const Wording& w);
enum class BenchCallFault { card_without_network, card_without_port, one_thing_at_a_time };
std::string say(BenchCallFault fault, const Wording& w);

// An address that the server could not have.
std::string not_opened(const std::string& address, unsigned port, const std::error_code& error, const Wording& w);
// Nobody answers on this machine at the port.
std::string no_server(unsigned port, const Wording& w);
// Somebody does, and has no code to give.
std::string no_pairing(unsigned port, const Wording& w);
// Neither XDG_STATE_HOME nor HOME is set.
std::string no_state_folder(const Wording& w);

// Below the first address. `address`: of the network's door.
std::string network_served(const std::string& address, const Wording& w);
std::string pairing_code(const std::string& code, const std::string& address, const Wording& w);
std::string no_tablets(const Wording& w);
std::string tablet_line(int number, const std::string& day, const std::string& client, const Wording& w);
std::string no_such_tablet(int number, const Wording& w);
std::string tablet_revoked(int number, const Wording& w);
// It was told to end, and something was still being answered five seconds later.
std::string ended_while_answering(const Wording& w);

}  // namespace shaftcut
