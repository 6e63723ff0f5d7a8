// What whoever asks the engine wishes, and what the engine needs of the world and is handed: fonts, a clock, a library.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "shaftcut/documents/json/json.hpp"
#include "shaftcut/documents/page/document.hpp"
#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/documents/terminal/terminal.hpp"
#include "shaftcut/reading/source/source.hpp"

namespace shaftcut {

struct Wishes {
    std::optional<Units> units;             // of the documents, and of lengths in CSV lists that name none; nothing: those of the file, else mm
    Paper paper = Paper::a4;
    Colour colour = Colour::none;           // of Format::terminal
    JsonLayout json = JsonLayout::indented;
    std::string list = {};                  // of a list of orders: the configuration's map by which it is read; empty: none
    bool tag = false;                       // with the answer to a cut, what goes with the shaft to its driver
    bool plate = false;                     // with each shaft made to order that can be built, its plate
    FontFiles fonts;                        // what sheets and pictures are drawn with; needed for those alone
    std::function<void(std::size_t drawn, std::size_t of)> labels_drawn = {};  // after each sheet of labels; from any thread
};

// Of a quote. `issued`: its day, YYYY-MM-DD; empty: the job's own. `discount`: "5%" or an amount in the currency of the prices, "12.50"; empty: none.
// `quantities`: of a job's quote, "2:12.5" for its second line.
struct QuoteWishes {
    std::string issued = {}, discount = {};
    std::vector<std::string> services = {}, quantities = {};
    bool alternatives = false;      // those of a refused cut come in any case
    bool before_measuring = false;  // an estimate, of a job without a shaft and a fit
    std::function<void(std::size_t done, std::size_t of)> quoted = {};  // after each order of a list
};

// Of a saw plan, or of all those of a batch.
struct SawWishes {
    std::optional<Source> stock = {};  // a list of bars; nothing: the workshop's stock
    std::optional<Length> kerf = {};   // nothing: that of the workshop's saw
    Length trim_start = {}, trim_end = {};
    double seconds = 10;               // for all plans of a batch together; what one leaves, the next may use
};

// How far one plan has come.
struct SawNews {
    double seconds_taken = 0, seconds_left = 0;
    std::int64_t cost = 0, lower_bound = 0;  // in millionths; 0: no plan yet
};

// `seconds` and `linear_programme` must be there.
struct SawMeans {
    std::function<double()> seconds;                // a clock that never goes back, from any moment on
    FindFunction linear_programme;                  // the functions of CLP (saw.hpp)
    std::function<bool()> stop = {};                // true: end each search with its best plan so far
    std::function<void(const SawNews&)> news = {};  // many times a second
    std::function<void()> planned = {};             // after each plan
};

}  // namespace shaftcut
