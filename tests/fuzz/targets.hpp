// What must hold for any bytes whatever. Each target returns nothing, or what it found wrong in words; a crash, a fault
// that a sanitizer reports, and an exception are findings too.
//
// libfuzzer.cpp makes a fuzzer of each (tests/fuzz/run); replay_test.cpp runs them over their corpus in the tests.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace shaftcut::fuzz {

// Reading a job, what was measured after the cut, a catalogue, a workshop: either a value or problems, each with a place inside the file and two sentences
// of text that a terminal shows as they are.
std::string try_job(std::string_view bytes);
std::string try_measured(std::string_view bytes);  // of K-1042's shaft, on to its JSON and terminal text
std::string try_measures(std::string_view bytes);  // on to its JSON, its terminal text and the job that it begins, whose only faults are what is still open
std::string try_choose(std::string_view bytes);    // a job to choose for, on to its JSON and terminal text
std::string try_catalogue(std::string_view bytes);
std::string try_workshop(std::string_view bytes);

// A list of orders, XML where it begins with "<", else CSV, on to each order's plan and the batch's JSON.
std::string try_orders(std::string_view bytes);

// A list of orders as a workbook: one where it begins with "PK", else the sheet's part of one, so that no checksum keeps what is made up out.
std::string try_workbook(std::string_view bytes);

// The strict readers of numbers: what they accept is within its bounds, and what is printed of it reads as the same.
std::string try_lengths(std::string_view bytes);

// A job on to its work order, JSON, terminal text and, for one in `every` by its bytes, PDF and XLSX.
std::string try_documents(std::string_view bytes, std::size_t every);

// A client's bytes to the bench page's server, and a request that HTTP has let pass: a reply with the headers that all have, and through the
// network's door nothing but the page for who has no token.
std::string try_bench(std::string_view bytes);
std::string try_bench_request(std::string_view bytes);

struct Target {
    const char* name;
    std::string (*run)(std::string_view bytes);
    std::vector<std::string> corpus;  // folders, seen from the project's
};
const std::array<Target, 12>& targets();

}  // namespace shaftcut::fuzz
