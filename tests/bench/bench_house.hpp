// A bench page's server without sockets, in a world of its own: clock, codes, tokens and the tablets' file are the test's.
#pragma once

#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "bench.hpp"
#include "support/engine.hpp"
#include "support/fonts.hpp"

namespace shaftcut::test {

struct World {
    double seconds = 1000;
    std::int64_t now = 1'795'000'000;
    std::vector<Tablet> tablets = {};
    int codes = 0, tokens = 0;
    bool writable = true;
    std::vector<Document> printed = {};
    bool printer_takes = true;
};

inline PairingMeans means_in(World& world)
{
    return {[&world] { return world.seconds; },
            [&world] { return world.now; },
            [&world] { return "1000000" + std::to_string(++world.codes); },
            [&world] { return "token" + std::to_string(++world.tokens); },
            [&world] { return world.tablets; },
            [&world](const std::string& hash, std::int64_t now, const std::string& client) {
                if (world.writable) world.tablets = with_tablet(world.tablets, hash, now, client);
                return world.writable;
            }};
}

inline constexpr const char* here = "127.0.0.1:8117";
inline constexpr const char* there = "192.168.1.20:8117";

// `network`: whether the workshop's network is served too.
inline House house_in(World& world, bool network)
{
    House house{server_names(network ? "192.168.1.20" : "", 8117), [&world] { return world.seconds; }};
    if (network) house.pairing.emplace(means_in(world));
    if (network) house.address = "http://192.168.1.20:8117/";
    return house;
}

inline Configuration configuration_with_prices()
{
    Configuration configuration = demo_configuration();
    configuration.files.push_back(file_of(SHAFTCUT_SOURCE_DIR "/config/prices.csv"));
    return configuration;
}

inline Desk desk_in(World& world, bool network = false, bool printer = false)
{
    Desk desk{Engine::load(configuration_with_prices()).engine.value(), font_files()};
    desk.network = network;
    if (printer)
        desk.print = [&world](const Document& document) {
            world.printed.push_back(document);
            return world.printer_takes;
        };
    return desk;
}

inline Request get(const std::string& target, Door door = Door::here)
{
    return {Method::get, target, {{"host", door == Door::here ? here : there}}, "", door == Door::here ? "127.0.0.1" : "192.168.1.31", door};
}

// As this server's own page posts.
inline Request post(const std::string& target, const std::string& body, Door door = Door::here)
{
    Request request = get(target, door);
    request.method = Method::post;
    request.body = body;
    request.headers.push_back({"origin", "http://" + request.headers.front().value});
    request.headers.push_back({"content-type", "application/xml"});
    return request;
}

inline Request with(Request request, const std::string& name, const std::string& value)
{
    request.headers.push_back({name, value});
    return request;
}

inline Request without(Request request, const std::string& name)
{
    std::erase_if(request.headers, [&](const Header& header) { return header.name == name; });
    return request;
}

inline std::string header_of(const Reply& reply, const std::string& name)
{
    for (const Header& header : headers_of(reply))
        if (header.name == name) return header.value;
    return {};
}

}  // namespace shaftcut::test
