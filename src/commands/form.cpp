// shaftcut form: a blank measuring form to take to the tractor.
#include <filesystem>
#include <ostream>
#include <sstream>

#include "commands.hpp"
#include "shaftcut/commands/configuration.hpp"
#include "shaftcut/commands/hand_out.hpp"
#include "shaftcut/commands/options.hpp"
#include "shaftcut/commands/output.hpp"
#include "shaftcut/documents/measuring_form.hpp"
#include "shaftcut/reading/known_names.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

class Form final : public Command {
public:
    Form()
    {
        texts_.formats = "pdf";
        texts_.default_units = "mm";
        described_.add(common_options(texts_)).add_options()(
            "series", boost::program_options::value(&series_)->value_name("NAME"), "draw where this series of the catalogue is measured from");
    }

    std::string set_up(const std::vector<std::string>& arguments) override
    {
        std::vector<std::string> files;
        if (std::string fault = parse_arguments(arguments, described_, files); !fault.empty()) return fault;
        if (!files.empty()) return shaftcut::quoted(files.front()) + " is not expected; form takes options only";
        if (texts_.output == "-") return "form writes no JSON to standard output; name a folder in --output";
        const CheckedOptions result = checked(texts_);
        options_ = result.options;
        if (!result.fault.empty()) return result.fault;
        return options_.formats == std::vector{Format::pdf} ? "" : "form writes PDF only; leave --formats out, or write --formats pdf";
    }

    Outcome run(Console& console) override
    {
        const ConfigurationRead read = read_configuration(options_.config, console);
        if (!read.configuration) return read.outcome;
        const Catalogue& catalogue = read.configuration->catalogue;
        const Series* series = find_series(catalogue, series_);
        if (!series && !series_.empty()) {
            console.err << "shaftcut: series " << shaftcut::quoted(series_) << " is not in the catalogue; " << names_in(catalogue.series, "the catalogue").instead_of(series_) << "\n";
            return Outcome::bad_input;
        }
        return hand_out(measuring_form_document(form_for(series, *read.configuration), options_.paper), console);
    }

    std::string help() const override
    {
        std::ostringstream text;
        text << "shaftcut form\n\nWrites a blank measuring form (PDF) to take to the tractor: it asks for what a job file holds. No other format is written.\n\n" << described_;
        return text.str();
    }

private:
    MeasuringForm form_for(const Series* series, const Configuration& configuration) const
    {
        MeasuringForm form;
        if (series) form.series = *series;
        for (const Connection& connection : configuration.catalogue.connections) form.connections.push_back(connection.name);
        form.units = options_.units.value_or(Units::mm);
        form.plus_minus = configuration.workshop.measuring_plus_minus;
        form.owner = configuration.workshop.name;
        return form;
    }

    Outcome hand_out(const Document& document, Console& console) const
    {
        if (const Outcome outcome = make_folder(options_, console); outcome != Outcome::answered) return outcome;
        const std::string fault = write_documents(options_.output, {document}, options_.replace ? Existing::replace : Existing::keep);
        if (!fault.empty()) {
            console.err << fault << "\n";
            return Outcome::unwritable;
        }
        console.out << "wrote " << (std::filesystem::path(options_.output) / document.name).string() << "\n";
        return Outcome::answered;
    }

    CommonOptionTexts texts_;
    std::string series_;
    boost::program_options::options_description described_;
    CommonOptions options_;
};

}  // namespace

std::unique_ptr<Command> make_form() { return std::make_unique<Form>(); }

}  // namespace shaftcut
