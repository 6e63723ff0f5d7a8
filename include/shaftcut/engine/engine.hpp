// The engine's door: bytes in, answers and documents out, the same for every front end.
//
// Behind it nothing opens a file, reads the environment, asks a clock or keeps anything that two engines would share. An engine never
// changes: several threads may ask it at once. What it needs of the world is handed in (wishes.hpp). No answer depends on the day.
// Checked by tests/engine/engine_test.cpp, and by tests/second_front_end, which is built with what is installed and nothing else.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "shaftcut/engine/answer.hpp"
#include "shaftcut/engine/additions.hpp"
#include "shaftcut/engine/bench_answer.hpp"
#include "shaftcut/engine/build_run.hpp"
#include "shaftcut/engine/quote_answer.hpp"
#include "shaftcut/engine/saw_run.hpp"
#include "shaftcut/engine/series_form.hpp"

namespace shaftcut {

// The configuration's files; each is found by what its name ends with behind the last "/": series.xml, workshop.xml, and lists.xml and
// prices.csv, which may be missing.
struct Configuration {
    std::vector<Source> files;
};

struct Known;   // what the configuration says
struct Loaded;

class Engine {
public:
    static Loaded load(const Configuration& configuration);

    // What to cut off a shaft that exists. A job that can be read is always answered.
    Answer answer(const Source& job, const Wishes& wishes) const;
    // The operating lengths that a machine's geometry gives. A job without any is a problem.
    Answer lengths(const Source& job, const Wishes& wishes) const;
    // What a shaft is that was cut by the answer to this job, by what was measured of it afterwards. Everything wrong with either file is a problem.
    AfterCutAnswer after_cut(const Source& job, const Source& measured, const Wishes& wishes) const;
    // What a job, or each customer's orders of a list, costs by the workshop's prices.
    QuoteAnswer quote(const Source& file, const Wishes& wishes, const QuoteWishes& quote) const;
    // Which shafts of the catalogue would serve, of a job that states no shaft but its ends. `progress`: how many series are done.
    ChooseAnswer choose(const Source& job, const Wishes& wishes, const ChooseProgress& progress = {}) const;
    // Which series of the catalogue a shaft can be, by what was measured of it, and what to measure next.
    IdentifyAnswer identify(const Source& measures, const Wishes& wishes) const;
    // Shafts made to order, of a list whose name ends with .csv or .xml.
    BuildStart build(const Source& orders, const Wishes& wishes, const SawWishes& saw) const;
    // What nobody knows yet of a list of orders: headings that neither the wished map nor `learnt` knows, and, once none is left, such values.
    ListQuestions unknown_in(const Source& orders, const Wishes& wishes, const Learnt& learnt) const;
    // lists.xml, an empty one where there was none, with what was learnt in the map of this name, which is made where there is none.
    Addition lists_with(const Source& lists, const std::string& name, std::optional<Units> units, const Learnt& learnt) const;
    // What is asked of a new series, in the order of the bench; a yoke for each connection of the configuration.
    std::vector<SeriesQuestion> series_questions() const;
    // series.xml with the series and connections of another file in the same form.
    static Addition catalogue_with(const Source& catalogue, const Source& added);
    // A saw plan for a list of pieces.
    SawStart saw(const Source& pieces, const Wishes& wishes, const SawWishes& saw) const;
    // The problems of the stock alone, for a call whose list of orders (build) or pieces (saw) cannot be read.
    static Problems stock_problems(Question question, const Wishes& wishes, const SawWishes& saw);
    // A blank measuring form for this series, or for any where it is empty, that asks for this on the machine.
    FormAnswer form(const std::string& series, const Wishes& wishes, OnMachine machine = OnMachine::lengths) const;
    // A blank form for what identifies a shaft.
    FormAnswer identify_form(const Wishes& wishes) const;
    // The connections and series of the configuration, in lines.
    std::string catalogue(const Wishes& wishes) const;
    // What a form on a screen offers to choose from, and its words, as JSON: {"units", "language", "series", "shapes", "connections", "locks",
    // "devices", "features", "conditions", "prices", "register", "words"}.
    std::string bench_catalogue(const Wishes& wishes) const;
    // The machines of a job as they move.
    MachineFramesAnswer machine_frames(const Source& job, const Wishes& wishes) const;

private:
    explicit Engine(std::shared_ptr<const Known> known) : known_(std::move(known)) {}
    std::shared_ptr<const Known> known_;
};

// An engine, or why there is none: the files' problems, and the names of those that were not handed in.
struct Loaded {
    std::optional<Engine> engine;
    Problems problems;
    std::vector<std::string> missing;
};

// "pugixml 1.13, cairo 1.16.0, …": the libraries that the engine was built with.
std::string libraries_built_with();

}  // namespace shaftcut
