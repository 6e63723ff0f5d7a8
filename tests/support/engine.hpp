// An engine with the demo's configuration, as every front end has one.
#pragma once

#include <string>
#include <variant>

#include "files/load.hpp"

namespace shaftcut::test {

inline Source file_of(const std::string& path) { return std::get<Source>(load(path)); }

inline Configuration demo_configuration()
{
    const std::string folder = SHAFTCUT_SOURCE_DIR "/config/";
    return {{file_of(folder + "series.xml"), file_of(folder + "workshop.xml")}};
}

inline const Engine& demo_engine()
{
    static const Engine engine = Engine::load(demo_configuration()).engine.value();
    return engine;
}

}  // namespace shaftcut::test
