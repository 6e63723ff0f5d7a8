// shaftcut catalogue: what the configuration holds; checks it.
#include <ostream>

#include "call/engine_command.hpp"
#include "commands.hpp"
#include "commands/usage_faults.hpp"

namespace shaftcut {
namespace {

CommonOptionTexts listing_texts()
{
    CommonOptionTexts texts;
    texts.command = CommandName::catalogue;
    texts.units_text = UnitsText::of_listing;
    return texts;
}

class CatalogueCommand final : public EngineCommand {
public:
    CatalogueCommand() : EngineCommand(listing_texts()) {}

private:
    boost::program_options::options_description described(const Wording& w) override { return listing_options(texts(), w); }

    std::string check(const Wording& w) override { return files().empty() ? "" : not_expected(CommandName::catalogue, files().front(), w); }

    Outcome answer(const Engine& engine, Console& console) override
    {
        console.out << configuration_line(options().config, console.wording) << "\n";
        Wishes units_only;
        units_only.units = options().units;
        console.out << engine.catalogue(units_only);
        return Outcome::answered;
    }
};

}  // namespace

std::unique_ptr<Command> make_catalogue() { return std::make_unique<CatalogueCommand>(); }

}  // namespace shaftcut
