// A front end beside the commands: it links what is installed of the engine and nothing else of the program.
// Usage: second_front_end FONT-FOLDER SERIES.XML WORKSHOP.XML < JOB.XML > CUT-SHEET.PDF
// The engine sees bytes: the job is read from standard input into memory, and the sheet's bytes go to standard output.
#include <fstream>
#include <iostream>
#include <iterator>

#include <shaftcut/engine/engine.hpp>

namespace {

std::string bytes_of(std::istream& stream) { return {std::istreambuf_iterator<char>(stream), {}}; }

std::string bytes_of(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return bytes_of(file);
}

shaftcut::FontFile font(const std::string& path) { return {path, std::make_shared<const std::string>(bytes_of(path))}; }

}  // namespace

int main(int count, char** arguments)
{
    using namespace shaftcut;
    if (count != 4) return 2;
    const std::string fonts = arguments[1];
    Wishes wishes;
    wishes.fonts = {font(fonts + "/DejaVuSans.ttf"), font(fonts + "/DejaVuSans-Bold.ttf")};
    const Loaded loaded = Engine::load({{{"series.xml", bytes_of(arguments[2])}, {"workshop.xml", bytes_of(arguments[3])}}});
    if (!loaded.engine) return 2;
    const Answer answer = loaded.engine->answer({"job.xml", bytes_of(std::cin)}, wishes);
    for (const Problem& problem : answer.problems) std::cerr << to_string(problem) << "\n";
    if (!answer.work_order) return 2;
    for (const Document& document : documents(answer, {Format::pdf}, wishes)) std::cout << document.bytes;
    return std::cout.flush() ? 0 : 3;
}
