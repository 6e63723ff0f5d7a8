#include "commands/help_words.hpp"

namespace shaftcut {

std::string summary(CommandName command, const Wording& w)
{
    switch (command) {
    case CommandName::cut: return w("cut sheets and work orders for shafts that exist");
    case CommandName::form: return w("a blank measuring form to take to the tractor");
    case CommandName::lengths: return w("shortest and longest operating lengths from the machine's geometry");
    case CommandName::build: return w("parts, blanks and saw plans for shafts made to order");
    case CommandName::saw: return w("a saw plan for any list of pieces on any stock");
    case CommandName::after_cut: return w("the shaft as it was cut: right, how much more, or not to be used");
    case CommandName::identify: return w("which series a measured shaft can be, and what to measure next");
    case CommandName::quote: return w("what the job costs");
    case CommandName::bench: return w("a page for a tablet or PC beside the saw");
    case CommandName::choose: return w("which shafts of the catalogue would serve a tractor and machine, cut or as they are");
    case CommandName::catalogue_add: return w("asks for a new series' figures and writes it into the configuration");
    case CommandName::catalogue: break;
    }
    return w("what the configuration holds; checks it");
}

std::string usage(CommandName command, const Wording& w)
{
    switch (command) {
    case CommandName::cut: return w("shaftcut cut JOB.xml...\n\nWrites a cut sheet (PDF), a work order (XLSX) and the figures (JSON) for each job;\nwith --tag also what goes with the shaft to its driver (PDF).");
    case CommandName::form:
        return w("shaftcut form\n\nWrites a blank measuring form (PDF) to take to the tractor: one leaf that asks for what a job file holds; with --identify\na page that asks for what tells the series of a shaft. No other format is written.");
    case CommandName::lengths:
        return w("shaftcut lengths JOB.xml...\n\nWrites the shortest and longest operating lengths and the joint angles that the machine's geometry gives, each with the\n"
                 "position where it occurs: a sheet with drawings to scale (PDF) and the figures (JSON).");
    case CommandName::build:
        return w("shaftcut build ORDERS.csv|ORDERS.xlsx|ORDERS.xml\n\nMakes out a whole list of shafts made to order: an assembly work order of each (PDF) with\n"
                 "its blanks, checks, parts and operations; for all of them together saw plans, labels (PDF), a workbook (XLSX) and the\n"
                 "figures (JSON); with --plate also what stands on each new shaft's plate (PDF). Ctrl-C ends the search for saw plans with the best so far.");
    case CommandName::saw:
        return w("shaftcut saw PIECES.csv\n\nPlans how to saw a list of pieces out of stock bars at the least cost: a saw sheet (PDF), a workbook (XLSX) and the\n"
                 "figures (JSON). The file has the columns length, count and label. Ctrl-C ends the search with the best plan so far.");
    case CommandName::after_cut:
        return w("shaftcut after-cut JOB.xml MEASURED.xml\n\nSays of a shaft that was cut by the answer to the job what it is by what was measured of it afterwards: right, how\n"
                 "much more to saw off, to be measured again, or too short and not to be used; and writes the figures (JSON). A shaft to be\n"
                 "measured again or not to be used ends the call with 1.");
    case CommandName::quote:
        return w("shaftcut quote JOB.xml... | ORDERS.csv|ORDERS.xlsx|ORDERS.xml\n\nSays what a job costs by the prices of workshop.xml and prices.csv, or what the orders of each customer of a list do: an\n"
                 "offer (PDF), the desk's own workbook (XLSX) and the figures (JSON). Of a cut that is refused it offers what would serve\n"
                 "instead. A quote that is not complete ends the call with 1.");
    case CommandName::bench:
        return w("shaftcut bench\n\nServes a page on which a shaft is typed in as the tape says it, with the answer beside it: the answers of cut, after-cut,\n"
                 "choose and quote, and their papers. Its first line is the address; it serves this machine only, unless --lan says which\n"
                 "network too. It ends with Ctrl-C. Anyone in that network can read along: its words go as plain HTTP.");
    case CommandName::identify:
        return w("shaftcut identify MEASURES.xml...\n\nSays of each shaft, by what was measured of it, which series of the catalogue it can be and how sure that is, whether it is\n"
                 "mixed of several or of none, and what to measure next: a page for the bench (PDF) and the figures (JSON). Where a shaft is\n"
                 "not decided the call ends with 1.");
    case CommandName::choose:
        return w("shaftcut choose JOB.xml...\n\nSays which shafts of the catalogue would serve a tractor and machine: every series at every closed length that it lists, as\n"
                 "it is, cut, or why not, and what could be made to order; and writes the figures (JSON). The job's shaft has no series and no\n"
                 "lengths, and a joint may be either. Where none serves the call ends with 1.");
    case CommandName::catalogue_add:
        return w("shaftcut catalogue add [FILE]\n\nAsks for the figures of a new series one by one and writes it into series.xml of the configuration; with FILE, a\n"
                 "catalogue that holds the new series, writes those. What the catalogue could not hold is refused; all else in series.xml\n"
                 "stays as it is.");
    case CommandName::catalogue: break;
    }
    return w("shaftcut catalogue\n\nLists the folder, connections and series of the configuration, after checking its files. shaftcut catalogue add --help says\nhow a series comes into it.");
}

std::string program_help(const std::string& commands, const Wording& w)
{
    return w("shaftcut COMMAND [OPTION]... [FILE]...\n\nCuts PTO drive shafts to length: computes every cut, checks what must hold, and refuses the rest.\n\nCommands\n{commands}\n"
             "shaftcut COMMAND --help says more; shaftcut --version says what this is.\n",
             {{"commands", commands}});
}

std::string version_lines(const BuiltWith& built, const Wording& w)
{
    return w("shaftcut {version}\nbuilt with {compiler}; Boost {boost}, {libraries}, libsodium {sodium}\n",
             {{"version", built.version}, {"compiler", built.compiler}, {"boost", built.boost}, {"libraries", built.libraries}, {"sodium", built.sodium}});
}

std::string say(OptionText option, const Wording& w)
{
    switch (option) {
    case OptionText::heading: return w("Options");
    case OptionText::config: return w("folder of series.xml and workshop.xml (default: those beside the program, else the installed ones)");
    case OptionText::help: return w("say this");
    case OptionText::version: return w("say what this program is and what it was built with");
    case OptionText::output: return w("folder for the documents (default: here); - writes JSON to standard output");
    case OptionText::output_without_json: return w("folder for the documents (default: here)");
    case OptionText::paper: return w("paper of the documents (default: a4)");
    case OptionText::replace: return w("overwrite documents that exist");
    case OptionText::series: return w("draw where this series of the catalogue is measured from, with its figures beside the boxes");
    case OptionText::machine: return w("ask for a machine's own dimensions in the place of the lengths: trailed or mounted");
    case OptionText::tag: return w("write ORDER-tag.pdf too: what goes with the shaft to its driver");
    case OptionText::stock_of_orders: return w("bars of each profile that it names, instead of the workshop's: a file with the columns profile, length, count and cost");
    case OptionText::stock_of_pieces: return w("bars: a file with the columns length, count and cost (default: the workshop's stock)");
    case OptionText::kerf: return w("what the blade takes (default: the workshop's saw)");
    case OptionText::trim_start: return w("waste at a bar's starting end, kerf included (default: 0)");
    case OptionText::trim_end: return w("waste at a bar's other end (default: 0)");
    case OptionText::list: return w("read the list by this map of the configuration's lists.xml: its headings, words and articles");
    case OptionText::issued: return w("day of the quote, YYYY-MM-DD (default: that of SOURCE_DATE_EPOCH, else the job's own)");
    case OptionText::discount: return w("taken off: a percentage, such as 5%, or an amount");
    case OptionText::service: return w("a service that workshop.xml prices, such as collection; may be given again");
    case OptionText::alternatives: return w("offer what else would serve, too; of a refused cut it is offered in any case");
    case OptionText::before_measuring: return w("an estimate of a job that holds no shaft and no fit yet, with the measuring form");
    case OptionText::learn: return w("ask what the list's unknown headings, words and articles are, and write that into the map of --list; nothing is built");
    case OptionText::port: return w("port to serve at, 0 for any that is free (default: 8117)");
    case OptionText::open: return w("open the page in this machine's browser");
    case OptionText::lan: return w("serve paired tablets in the workshop's network too, at this address of this machine");
    case OptionText::pair: return w("show the code that pairs a tablet with the bench that is served, and end");
    case OptionText::card: return w("write bench-card.pdf, the address with its code for the wall, and end");
    case OptionText::tablets: return w("list the paired tablets, and end");
    case OptionText::revoke: return w("let this tablet in no longer, and end");
    case OptionText::printer: return w("print on this printer (CUPS) where the page is asked to");
    case OptionText::output_of_card: return w("folder for the card (default: here)");
    case OptionText::job: return w("write SHAFT-job.xml too: the job of this shaft, with a \"?\" in the place of each figure that is still to be measured");
    case OptionText::identify: return w("ask for what tells a shaft's series instead: one page");
    case OptionText::plate: return w("write ORDER-plate.pdf too: what stands on a new shaft's plate");
    case OptionText::seconds: break;
    }
    return w("time allowed for the plan (default: 10)");
}

std::string say(UnitsText units, const Wording& w)
{
    switch (units) {
    case UnitsText::of_job: return w("units of what is written (default: the job's own)");
    case UnitsText::of_listing: return w("units of what is written (default: mm)");
    case UnitsText::of_orders: return w("units of what is written and of lengths in CSV lists that name none (default: an XML list's own, mm for CSV)");
    case UnitsText::of_pieces: break;
    }
    return w("units of what is written and of lengths in the lists that name none (default: mm)");
}

std::string formats_text(const std::vector<std::string>& offered, const std::string& by_default, const Wording& w)
{
    return w("documents to write, of {offered} (default: {default})", {{"offered", w.all_of(offered)}, {"default", by_default}});
}

}  // namespace shaftcut
