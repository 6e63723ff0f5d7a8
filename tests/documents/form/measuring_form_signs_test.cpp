// What the measuring form says of signs and slopes.
#include <map>

#include "documents/page/page_checks.hpp"
#include "support/catch.hpp"
#include "support/papers.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

MeasuringForm plain_form(OnMachine machine)
{
    MeasuringForm form;
    form.machine = machine;
    form.plus_minus = Length::millimetres(2);
    return form;
}

// The box to write in that has this word in its corner, behind its letter.
Rect box_named(const Page& page, const std::string& word)
{
    for (const Rect& box : boxes_of(page))
        for (const Text& text : texts_of(page))
            if (box.width > 20 && text.text.size() > 2 && text.text.substr(2) == word && text.baseline.x >= box.x && text.baseline.x < box.x + 3 && text.baseline.y >= box.y && text.baseline.y < box.y + 5) return box;
    FAIL("no box " << word);
    return {};
}

}  // namespace

TEST_CASE("measuring form: what may be negative has a minus to tick in its own box, with what it means")
{
    const std::map<std::string, std::string> trailed{{"input left", "right"}, {"input tilt", "falls"}};
    const std::map<std::string, std::string> mounted{{"lower pivot behind", "in front"}, {"top pivot behind", "in front"}, {"input above", "below"}, {"input tilt", "falls"}};
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        for (const auto& [machine, signed_ones] : {std::pair(OnMachine::trailed, trailed), {OnMachine::mounted, mounted}}) {
            const Page page = measuring_form_of(plain_form(machine), paper)[1];
            CHECK(count_of({page}, "−") == static_cast<std::int64_t>(signed_ones.size()));
            for (const auto& [word, side] : signed_ones) {
                INFO(word);
                const Rect box = box_named(page, word);
                std::string inside_it;
                for (const Text& text : texts_of(page))
                    if (text.box.x >= box.x && text.box.right() <= box.right() && text.box.y >= box.y && text.box.bottom() <= box.bottom()) inside_it += text.text + "|";
                CHECK(inside_it.find("−|" + side) != std::string::npos);
            }
        }
    }
}

TEST_CASE("measuring form: a crest and a hollow have one name each, the job format's")
{
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const std::string text = all_text(measuring_form_of(plain_form(OnMachine::lengths), paper));
        CHECK(text.find("overacrest") != std::string::npos);
        CHECK(text.find("hump") == std::string::npos);
        CHECK(text.find("inadip") == std::string::npos);
    }
}
