// An office's list that is learnt, and then read.
#include "commands/program.hpp"
#include "support/catch.hpp"

using namespace shaftcut::test;

namespace {

const std::string list = "Auftrag;Baureihe;Kind;Innenrohr;Gelenk Traktor;Gelenk Gerät;Profil Traktor;Length;Lock;Note\n"
                         "K1;Alder 2;primär;Gerät;einfach;einfach;Z6;830;ring;x\nK2;Alder2;primär;Gerät;einfach;einfach;1-3/8-6;960;;\n";

// A configuration of its own, and the list.
struct Office {
    Folder at;
    std::string config = at.file("config"), orders = at.file("own.csv");
    Office()
    {
        std::filesystem::copy(config_folder, config);
        write_all(orders, list);
    }
    Run learn(const std::string& answers, const std::string& name = "Own") const { return run({"build", "--config", config, "--learn", "--list", name, orders}, answers); }
    std::string maps() const { return read_all(config + "/lists.xml"); }
};

const std::string answers = "role\n16\ncolour\nimplement_lock\n\nmetres\nmm\nAlder 2\n1\nrope\ncovered-collar\n";

}  // namespace

TEST_CASE("an office's list is learnt column by column, then word by word, and read by it")
{
    const Office office;
    const std::string before = office.maps();
    CHECK(run({"build", "--config", office.config, "--output", office.at.file("o"), office.orders}).exit == 2);
    const Run learnt = office.learn(answers);
    INFO(learnt.out << learnt.err);
    CHECK(learnt.exit == 0);
    CHECK(learnt.out.find("\"Length\", such as \"830\" and \"960\"") != std::string::npos);
    CHECK(learnt.out.find("There is no column \"colour\".") != std::string::npos);
    CHECK(learnt.out.find("What is \"Alder2\" in series, perhaps Alder 2?") != std::string::npos);
    CHECK(learnt.out.find("\"rope\" is none of these.") != std::string::npos);
    const std::string after = office.maps();
    CHECK(after.starts_with(before.substr(0, before.rfind("</lists>"))));
    CHECK(after.ends_with("    <value column=\"implement_lock\" text=\"ring\" means=\"covered-collar\"/>\n  </list>\n</lists>\n"));
    const Run built = run({"build", "--config", office.config, "--output", office.at.file("o"), "--formats", "json", "--list", "Own", office.orders});
    INFO(built.err);
    CHECK(built.err == "");
    CHECK(built.out.find("K2: HELD: 2 open") != std::string::npos);
    CHECK(office.learn("").out.find("is known; nothing was written") != std::string::npos);
}

TEST_CASE("unit, order of days and articles are asked, and the list is built by them")
{
    const Office office;
    write_all(office.orders, "Job;Item;Due\nA1;MW-1;4/12/26\nA2;MW-2;2026-12-05\nA3;MW-1;\n");
    // The headings; how 4/12/26 is read; of MW-1 all but speed and guard, its closed length once wrong; of MW-2 nothing.
    const std::string all = "1\narticle\nday-first\n"
                            "Alder 2\nprimary\n540\nimplement\nstandard\n1-3/8-6\nshrouded-push-pin\nnone\nstandard\n1-3/8-6\nclamp-bolt\n\n\n83\n830\n\n"
                            "\n\n\n\n\n\n\n\n\n\n\n\n\n\n";
    const Run learnt = office.learn(all);
    INFO(learnt.out << learnt.err);
    REQUIRE(learnt.exit == 0);
    CHECK(learnt.out.find("What stands first in 4/12/26, the day or the month?") != std::string::npos);
    CHECK(learnt.out.find("Article \"MW-1\": what is the same in all of its lines?") != std::string::npos);
    const std::string maps = office.maps();
    CHECK(maps.find("<list name=\"Own\" dates=\"day-first\">") != std::string::npos);
    CHECK(maps.find("    <article number=\"MW-1\" series=\"Alder 2\" role=\"primary\" speed=\"540\" inner-tube=\"implement\">\n      <closed length=\"830 mm\"/>\n"
                    "      <end side=\"tractor\" joint=\"standard\" connection=\"1-3/8-6\" lock=\"shrouded-push-pin\" device=\"none\"/>\n"
                    "      <end side=\"implement\" joint=\"standard\" connection=\"1-3/8-6\" lock=\"clamp-bolt\"/>\n    </article>\n    <article number=\"MW-2\"/>\n") != std::string::npos);
    const Run built = run({"build", "--config", office.config, "--output", office.at.file("o"), "--formats", "json", "--list", "Own", office.orders});
    CHECK(built.out.find("A1: BUILD") != std::string::npos);
    CHECK(built.out.find("A3: BUILD") != std::string::npos);
}

TEST_CASE("what a map does not say yet of units is put into it")
{
    const Office office;
    const std::string own = "<lists units=\"mm\">\n  <list name=\"Own\">\n  </list>\n</lists>\n";
    write_all(office.config + "/lists.xml", own);
    CHECK(office.learn("role\n16\nimplement_lock\n\nin\n\n\n\n").exit == 0);
    CHECK(office.maps().starts_with("<lists units=\"mm\">\n  <list units=\"in\" name=\"Own\">\n"));
}

TEST_CASE("answers that end early write nothing")
{
    const Office office;
    const std::string before = office.maps();
    for (const std::string& enough : {std::string(), std::string("role\n"), answers.substr(0, answers.rfind("covered"))}) {
        const Run learnt = office.learn(enough);
        CHECK(learnt.exit == 2);
        CHECK(learnt.err.find("the answers ended before the questions; nothing was written") != std::string::npos);
        CHECK(office.maps() == before);
    }
}

TEST_CASE("a column that stands there already is asked for again")
{
    const Office office;
    const Run learnt = office.learn("series\nrole\n16\n13\n\n\nAlder 2\n1\n2\n");
    CHECK(learnt.exit == 0);
    CHECK(learnt.out.find("the column series stands there twice") != std::string::npos);
}

TEST_CASE("a map is named, one that there is to build by, and never for XML")
{
    const Office office;
    const Run unknown = run({"build", "--config", office.config, "--list", "Medow", office.orders});
    CHECK(unknown.exit == 2);
    CHECK(unknown.err == "shaftcut: --list \"Medow\" is not known; did you mean \"Meadow\"? lists.xml holds \"Meadow\"\n");
    CHECK(run({"build", "--learn", "x.csv"}).err.find("add --list NAME") != std::string::npos);
    CHECK(run({"build", "--list", "Meadow", "x.xml"}).exit == 2);
    CHECK(office.learn("", "\u200B").exit == 2);
}

TEST_CASE("the sample of an office's list is built by its map")
{
    const Folder at;
    const Run built = run({"build", "--config", config_folder, "--output", at.file("o"), "--formats", "json", "--list", "Meadow", source_folder + "/samples/meadow-orders.csv"});
    CHECK(built.exit == 0);
    CHECK(built.err == "");
}

TEST_CASE("a configuration without maps still builds, and one with wrong maps is named")
{
    const Office office;
    std::filesystem::remove(office.config + "/lists.xml");
    CHECK(run({"catalogue", "--config", office.config}).exit == 0);
    CHECK(office.learn(answers).exit == 0);
    write_all(office.config + "/lists.xml", "<lists units=\"mm\"><list/></lists>");
    CHECK(run({"catalogue", "--config", office.config}).err.find("lists.xml:1:19: list has no name") != std::string::npos);
}
