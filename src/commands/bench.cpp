// shaftcut bench: a page for a tablet or PC beside the saw.
#include <chrono>
#include <cstdlib>
#include <ctime>
#include <ostream>
#include <sstream>

#include "call/configuration.hpp"
#include "call/hand_out.hpp"
#include "call/options.hpp"
#include "commands.hpp"
#include "commands/bench_call_words.hpp"
#include "commands/usage_faults.hpp"
#include "files/load.hpp"
#include "files/other_programs.hpp"
#include "files/tablets_file.hpp"
#include "parse.hpp"
#include "secrets.hpp"
#include "serving/bench_server.hpp"
#include "shaftcut/engine/bench_card.hpp"

namespace shaftcut {
namespace {

namespace po = boost::program_options;

constexpr std::size_t token_bytes = 32;
constexpr std::int64_t most_port = 65535;

// As they were typed.
struct BenchTexts {
    std::string port = "8117", lan, printer, revoke;
    bool open = false, pair = false, card = false, tablets = false;
};

std::string address_of(const std::string& name, unsigned port) { return "http://" + name + ":" + std::to_string(port) + "/"; }

// An address of IPv6 stands in brackets.
std::string network_address_of(const std::string& network, unsigned port)
{
    return address_of(network.find(':') == std::string::npos ? network : "[" + network + "]", port);
}

double seconds_now() { return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count(); }

std::int64_t time_now() { return static_cast<std::int64_t>(std::time(nullptr)); }

PairingMeans pairing_means(const TabletsFile& file)
{
    return {seconds_now, time_now, random_code, [] { return random_hexadecimal(token_bytes); }, [file] { return file.all(); },
            [file](const std::string& hash, std::int64_t now, const std::string& client) { return file.add(hash, now, client); }};
}

class BenchCommand final : public Command {
public:
    BenchCommand()
    {
        common_.command = CommandName::bench;
        common_.formats = "pdf";
        common_.json_to_standard_output = false;
    }

    std::string set_up(const std::vector<std::string>& arguments, const Wording& w) override
    {
        const auto parsed = parse_arguments(arguments, described(w), w);
        if (!parsed.fault.empty()) return parsed.fault;
        if (!parsed.value.empty()) return not_expected(CommandName::bench, parsed.value.front(), w);
        const auto read = checked(common_, w);
        options_ = read.value;
        return read.fault.empty() ? fault_of_texts(w) : read.fault;
    }

    Outcome run(Console& console) override
    {
        if (texts_.pair) return show_code(console);
        if (texts_.tablets || revoked_ > 0) return look_after_tablets(console);
        if (texts_.card) return write_card(console);
        EngineLoaded loaded = load_engine(options_.config, console, true);
        return loaded.engine ? serve(std::move(*loaded.engine), console) : loaded.outcome;
    }

    std::string help(const Wording& w) override
    {
        std::ostringstream text;
        text << usage(CommandName::bench, w) << "\n\n" << described(w);
        return text.str();
    }

private:
    po::options_description described(const Wording& w)
    {
        auto options = listing_options(common_, w);
        options.add_options()
            ("paper", po::value(&common_.paper)->value_name("a4|letter"), say(OptionText::paper, w).c_str())
            ("port", po::value(&texts_.port)->value_name("N"), say(OptionText::port, w).c_str())
            ("open", po::bool_switch(&texts_.open), say(OptionText::open, w).c_str())
            ("lan", po::value(&texts_.lan)->value_name("ADDRESS"), say(OptionText::lan, w).c_str())
            ("pair", po::bool_switch(&texts_.pair), say(OptionText::pair, w).c_str())
            ("card", po::bool_switch(&texts_.card), say(OptionText::card, w).c_str())
            ("output", po::value(&common_.output)->value_name("DIR"), say(OptionText::output_of_card, w).c_str())
            ("replace", po::bool_switch(&common_.replace), say(OptionText::replace, w).c_str())
            ("tablets", po::bool_switch(&texts_.tablets), say(OptionText::tablets, w).c_str())
            ("revoke", po::value(&texts_.revoke)->value_name("N"), say(OptionText::revoke, w).c_str())
            ("printer", po::value(&texts_.printer)->value_name("NAME"), say(OptionText::printer, w).c_str());
        return options;
    }

    std::string fault_of_texts(const Wording& w)
    {
        const auto port = parse_whole(texts_.port, 0, most_port);
        if (!std::holds_alternative<std::int64_t>(port)) return no_port(texts_.port, w);
        port_ = static_cast<unsigned short>(std::get<std::int64_t>(port));
        if (!texts_.lan.empty() && !is_network_address(texts_.lan)) return no_network_address(texts_.lan, w);
        if (!texts_.printer.empty() && !is_printer_name(texts_.printer)) return no_printer_name(texts_.printer, w);
        const auto revoked = parse_whole(texts_.revoke.empty() ? "0" : texts_.revoke, texts_.revoke.empty() ? 0 : 1, most_port);
        if (!std::holds_alternative<std::int64_t>(revoked)) return no_tablet_number(texts_.revoke, w);
        revoked_ = static_cast<int>(std::get<std::int64_t>(revoked));
        const int calls = (texts_.pair ? 1 : 0) + (texts_.card ? 1 : 0) + (texts_.tablets ? 1 : 0) + (revoked_ > 0 ? 1 : 0);
        if (calls > 1) return say(BenchCallFault::one_thing_at_a_time, w);
        if (texts_.card && texts_.lan.empty()) return say(BenchCallFault::card_without_network, w);
        return texts_.card && port_ == 0 ? say(BenchCallFault::card_without_port, w) : "";
    }

    static Outcome fails(const std::string& why, Console& console)
    {
        console.err << "shaftcut: " << why << "\n";
        return Outcome::unwritable;
    }

    // Asks the bench that is served.
    Outcome show_code(Console& console) const
    {
        const Called called = call_bench(port_);
        const auto text_of = [&](const std::string& name) {
            const std::string before = "\"" + name + "\":\"";
            const std::size_t at = called.body.find(before), begin = at + before.size();
            return at == std::string::npos ? std::string() : called.body.substr(begin, called.body.find('"', begin) - begin);
        };
        if (called.status == 0) return fails(no_server(port_, console.wording), console);
        const std::string code = text_of("code");
        if (called.status != 200 || code.empty()) return fails(no_pairing(port_, console.wording), console);
        console.out << pairing_code(code, text_of("address"), console.wording) << "\n";
        return Outcome::answered;
    }

    Outcome write_card(Console& console) const
    {
        Wishes wishes;
        wishes.paper = options_.paper;
        wishes.fonts = load_fonts();
        const Outcome folder = make_folder(options_, console);
        if (folder != Outcome::answered) return folder;
        const BenchCard card{network_address_of(texts_.lan, port_), options_.units.value_or(Units::mm)};
        return or_report("shaftcut", console, [&] { return hand_out(documents(card, {Format::pdf}, wishes), "", options_, console, WroteLine::alone); });
    }

    Outcome look_after_tablets(Console& console) const
    {
        const auto file = TabletsFile::found();
        if (!file) return fails(no_state_folder(console.wording), console);
        if (revoked_ > 0) return revoke(*file, console);
        const std::vector<Tablet> tablets = file->all();
        if (tablets.empty()) console.out << no_tablets(console.wording) << "\n";
        for (const Tablet& tablet : tablets) console.out << tablet_line(tablet.number, day_of(tablet.paired), tablet.client, console.wording) << "\n";
        return Outcome::answered;
    }

    Outcome revoke(const TabletsFile& file, Console& console) const
    {
        switch (file.remove(revoked_)) {
        case TabletsFile::Removed::unwritable: return fails(say(Unwritable{file.path(), Unwritable::Why::system_written, std::make_error_code(std::errc::permission_denied)}, console.wording), console);
        case TabletsFile::Removed::unknown:
            console.err << "shaftcut: " << no_such_tablet(revoked_, console.wording) << "\n";
            return Outcome::bad_input;
        case TabletsFile::Removed::yes: break;
        }
        console.out << tablet_revoked(revoked_, console.wording) << "\n";
        return Outcome::answered;
    }

    Outcome serve(Engine engine, Console& console) const
    {
        const auto file = TabletsFile::found();
        if (!texts_.lan.empty() && !file) return fails(no_state_folder(console.wording), console);
        BenchServer server;
        if (const auto closed = server.open(port_, texts_.lan)) return fails(not_opened(closed->address, port_, closed->error, console.wording), console);
        House house{server_names(texts_.lan, server.port()), seconds_now};
        if (!texts_.lan.empty()) house.pairing.emplace(pairing_means(*file));
        if (!texts_.lan.empty()) house.address = network_address_of(texts_.lan, server.port());
        Bench bench(desk(std::move(engine)), std::move(house));
        say_addresses(server.port(), console);
        if (server.serve(bench)) return Outcome::answered;
        // The workers still have the bench in hand: the process ends around them.
        console.err << "shaftcut: " << ended_while_answering(console.wording) << std::endl;
        console.out.flush();
        std::_Exit(static_cast<int>(Outcome::unwritable));
    }

    Desk desk(Engine engine) const
    {
        Desk desk{std::move(engine), load_fonts()};
        if (!texts_.printer.empty()) desk.print = [printer = texts_.printer](const Document& document) { return print_document(printer, document); };
        desk.network = !texts_.lan.empty();
        desk.units = options_.units;
        desk.paper = options_.paper;
        return desk;
    }

    void say_addresses(unsigned port, Console& console) const
    {
        const std::string own = address_of("127.0.0.1", port);
        console.out << own << "\n";
        if (!texts_.lan.empty()) console.out << network_served(network_address_of(texts_.lan, port), console.wording) << "\n";
        console.out.flush();
        if (texts_.open) open_address(own);
    }

    CommonOptionTexts common_;
    CommonOptions options_;
    BenchTexts texts_;
    unsigned short port_ = 0;
    int revoked_ = 0;
};

}  // namespace

std::unique_ptr<Command> make_bench() { return std::make_unique<BenchCommand>(); }

}  // namespace shaftcut
