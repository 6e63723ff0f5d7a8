#include "saw_progress.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

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
    std::string words = fmt::format("{:.0f} s left, Ctrl-C takes the best plan so far", std::max(news.seconds_left, 0.0));
    if (news.cost > 0) words += fmt::format(": cost {}, at least {}", cost_figure(news.cost), cost_figure(news.lower_bound));
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
