#include "commands/bench_call_words.hpp"

#include "text.hpp"

namespace shaftcut {

std::string no_port(const std::string& value, const Wording& w) { return w("--port {value} is no port; give a number from 0 to 65535, 0 for any that is free", {{"value", quoted(value)}}); }

std::string no_network_address(const std::string& value, const Wording& w)
{
    return w("--lan {value} is no address of this machine in the workshop's network; give one as ip address lists it, such as 192.168.1.20", {{"value", quoted(value)}});
}

std::string no_printer_name(const std::string& value, const Wording& w) { return w("--printer {value} is no name of a printer; lpstat -e lists them", {{"value", quoted(value)}}); }

std::string no_tablet_number(const std::string& value, const Wording& w) { return w("--revoke {value} is no tablet's number; --tablets lists them", {{"value", quoted(value)}}); }

std::string say(BenchCallFault fault, const Wording& w)
{
    switch (fault) {
    case BenchCallFault::card_without_network: return w("a card is for tablets in the network; give --lan with the address that it shall print");
    case BenchCallFault::card_without_port: return w("a card holds for one port; give --port a number that is not 0");
    case BenchCallFault::one_thing_at_a_time: break;
    }
    return w("--pair, --card, --tablets and --revoke are calls of their own; give one of them");
}

std::string not_opened(const std::string& address, unsigned port, const std::error_code& error, const Wording& w)
{
    return w("the bench page cannot be served at {address}, port {port}: {error}; give --port another number, or 0 for any that is free",
             {{"address", address}, {"port", port}, {"error", error.message()}});
}

std::string no_server(unsigned port, const Wording& w) { return w("no bench is served on this machine at port {port}; start it with shaftcut bench --lan, or give its --port", {{"port", port}}); }

std::string no_pairing(unsigned port, const Wording& w) { return w("the bench at port {port} serves this machine only; start it with --lan to pair a tablet", {{"port", port}}); }

std::string no_state_folder(const Wording& w) { return w("there is no folder to keep paired tablets in: neither XDG_STATE_HOME nor HOME is set"); }

std::string network_served(const std::string& address, const Wording& w)
{
    return w("For paired tablets: {address}\nAnyone in this network can read along what they send and get. shaftcut bench --pair shows a code to pair one.", {{"address", address}});
}

std::string pairing_code(const std::string& code, const std::string& address, const Wording& w)
{
    return w("{code}\nType this on the tablet, at {address}. It holds for ten minutes, one tablet and five tries.", {{"code", code}, {"address", address}});
}

std::string no_tablets(const Wording& w) { return w("no tablet is paired"); }

std::string tablet_line(int number, const std::string& day, const std::string& client, const Wording& w)
{
    return w("{number}  paired {day} from {client}", {{"number", number}, {"day", day}, {"client", client}});
}

std::string no_such_tablet(int number, const Wording& w) { return w("there is no tablet {number}; --tablets lists them", {{"number", number}}); }

std::string tablet_revoked(int number, const Wording& w) { return w("tablet {number} is no longer paired", {{"number", number}}); }

std::string ended_while_answering(const Wording& w) { return w("the bench was told to end while something was still being answered"); }

}  // namespace shaftcut
