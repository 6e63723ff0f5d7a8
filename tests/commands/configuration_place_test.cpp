// Where the real program finds its configuration: in a build tree, installed, moved, called through a link, without /proc.
#include <algorithm>

#include "commands/process.hpp"
#include "support/shell.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
namespace fs = std::filesystem;

namespace {

// A tree's configuration, told from every other by the name of its one connection.
void write_configuration(const fs::path& folder, const std::string& name)
{
    fs::create_directories(folder);
    fs::copy_file(config_folder + "/workshop.xml", folder / "workshop.xml");
    write_all((folder / "series.xml").string(), "<catalogue units=\"mm\"><connection name=\"" + name + "\" speeds=\"540\" source=\"invented\"/></catalogue>");
}

std::string put_program(const fs::path& folder)
{
    fs::create_directories(folder);
    fs::copy_file(SHAFTCUT_PROGRAM, folder / "shaftcut");
    return (folder / "shaftcut").string();
}

Ended list_by(const std::string& program, const std::string& fault = "count 0")
{
    Start start{{"catalogue"}, fault};
    start.program = program;
    return run_process(start);
}

bool is_from(const Ended& ended, const std::string& folder, const std::string& name)
{
    return ended.exit == 0 && ended.out.starts_with("configuration " + folder + "\nconnection " + name + ":");
}

}  // namespace

TEST_CASE("in a build tree the configuration is the source's")
{
    const Folder tree;
    write_configuration(tree.file("config"), "built");
    CHECK(is_from(list_by(put_program(tree.file("build"))), tree.file("config"), "built"));
    CHECK(list_by(SHAFTCUT_PROGRAM).out.starts_with("configuration " + fs::path(SHAFTCUT_PROGRAM).parent_path().parent_path().string() + "/config\n"));
}

TEST_CASE("an installed program finds its own configuration, before a folder config, wherever it is moved")
{
    const Folder tree;
    const std::string installed = tree.file("installed"), moved = tree.file("moved");
    const ShellRun install = run_shell(tree.path(), "cmake --install '" + fs::path(SHAFTCUT_PROGRAM).parent_path().string() + "' --prefix '" + installed + "'");
    INFO(install.out);
    REQUIRE(install.exit == 0);
    CHECK(list_by(installed + "/bin/shaftcut").out.starts_with("configuration " + installed + "/share/shaftcut\n"));
    fs::rename(installed, moved);
    write_configuration(moved + "/config", "another");
    const Ended ended = list_by(moved + "/bin/shaftcut");
    CHECK(ended.exit == 0);
    CHECK(ended.out.starts_with("configuration " + moved + "/share/shaftcut\n"));
}

TEST_CASE("called through links, the program looks beside the file that they lead to")
{
    const Folder tree;
    const std::string program = put_program(tree.file("opt/bin"));
    write_configuration(tree.file("opt/share/shaftcut"), "own");
    write_configuration(tree.file("share/shaftcut"), "beside the link");
    fs::create_directories(tree.file("bin"));
    fs::create_symlink(program, tree.file("bin/first"));
    fs::create_symlink("first", tree.file("bin/shaftcut"));
    for (const char* fault : {"count 0", "noproc 0"}) CHECK(is_from(list_by(tree.file("bin/shaftcut"), fault), tree.file("opt/share/shaftcut"), "own"));
}

TEST_CASE("without /proc the program looks beside the file that was called, also by a path from here")
{
    const Folder tree;
    const std::string program = put_program(tree.file("build"));
    write_configuration(tree.file("config"), "built");
    CHECK(is_from(list_by(program, "noproc 0"), tree.file("config"), "built"));
    Start start{{"catalogue"}, "noproc 0", "", [&] { if (::chdir(tree.path().c_str()) != 0) ::_exit(126); }};
    start.program = "build/shaftcut";
    CHECK(is_from(run_process(start), tree.file("config"), "built"));
}

TEST_CASE("half a configuration is named and not passed over for another")
{
    const Folder tree;
    const std::string program = put_program(tree.file("bin"));
    write_configuration(tree.file("share/shaftcut"), "half");
    write_configuration(tree.file("config"), "whole");
    fs::remove(tree.file("share/shaftcut/series.xml"));
    const Ended ended = list_by(program);
    CHECK(ended.exit == 3);
    CHECK(ended.err.find(tree.file("share/shaftcut/series.xml")) != std::string::npos);
}

TEST_CASE("where no configuration is, every place tried is named, and --config")
{
    const Folder tree;
    const std::string program = put_program(tree.file("bin"));
    const Ended ended = list_by(program);
    if (ended.exit == 0) return;  // this machine has the program installed
    CHECK(ended.exit == 3);
    CHECK(ended.out.empty());
    CHECK(std::count(ended.err.begin(), ended.err.end(), '\n') == 1);
    for (const std::string& tried : {tree.file("share/shaftcut"), tree.file("config"), std::string("/share/shaftcut; name their folder by --config DIR")}) {
        INFO(tried << " in " << ended.err);
        CHECK(ended.err.find(tried) != std::string::npos);
    }
    Start named{{"catalogue", "--config", config_folder}};
    named.program = program;
    CHECK(run_process(named).exit == 0);
}
