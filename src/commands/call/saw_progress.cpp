#include "call/saw_progress.hpp"

#include <algorithm>
#include <ostream>

#include "commands/call_words.hpp"

namespace shaftcut {
namespace {

constexpr double first_words = 1, seconds_between_words = 0.5;

}  // namespace

SawMeans SawProgress::means(const InterruptWatch& interrupt)
{
    SawMeans means;
    means.seconds = [this] { return std::chrono::duration<double>(std::chrono::steady_clock::now() - started_).count(); };
    means.linear_programme = [this](const char* name) { return library_.function(name); };
    means.stop = [&interrupt] { return interrupt.came(); };
    means.news = [this](const SawNews& news) { note(news); };
    means.planned = [this] { clear(); };
    return means;
}

void SawProgress::note(const SawNews& news)
{
    if (!console_.progress || news.seconds_taken < next_words_) return;
    next_words_ = news.seconds_taken + seconds_between_words;
    say(news);
}

void SawProgress::say(const SawNews& news)
{
    std::string words = plan_so_far(news.seconds_left, news.cost, news.lower_bound, console_.wording);
    const std::size_t columns = words.size();
    words.resize(std::max(columns, said_), ' ');
    said_ = columns;
    console_.err << "\r" << words << std::flush;
}

void SawProgress::clear()
{
    if (said_ > 0) console_.err << "\r" << std::string(said_, ' ') << "\r" << std::flush;
    said_ = 0;
    next_words_ = first_words;
}

}  // namespace shaftcut
