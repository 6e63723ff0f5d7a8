// shaftcut catalogue: what the configuration holds; checks it.
#include <ostream>

#include "engine_command.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

CommonOptionTexts listing_texts()
{
    CommonOptionTexts texts;
    texts.default_units = "mm";
    return texts;
}

class CatalogueCommand final : public EngineCommand {
public:
    CatalogueCommand() : EngineCommand("shaftcut catalogue\n\nLists the folder, connections and series of the configuration, after checking its files.", listing_texts())
    {
        describe(listing_options(texts()));
    }

private:
    std::string check() override { return files().empty() ? "" : shaftcut::quoted(files().front()) + " is not expected; catalogue takes options only"; }

    Outcome answer(const Engine& engine, Console& console) override
    {
        console.out << "configuration " << options().config << "\n";
        Wishes units_only;
        units_only.units = options().units;
        console.out << engine.catalogue(units_only);
        return Outcome::answered;
    }
};

}  // namespace

std::unique_ptr<Command> make_catalogue() { return std::make_unique<CatalogueCommand>(); }

}  // namespace shaftcut
