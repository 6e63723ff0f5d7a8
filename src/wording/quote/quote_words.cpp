#include "quote/quote_words.hpp"

#include "build/build_words.hpp"
#include "money_words.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

std::string say_work(PricedWork work, const Wording& w)
{
    switch (work) {
    case PricedWork::cut_tube: return w("saw a tube to its length");
    case PricedWork::cut_guard: return w("saw a guard tube to its length");
    case PricedWork::deburr: return w("deburr and clean the tube");
    case PricedWork::grease: return w("grease");
    case PricedWork::refit: return w("fit the guards again and mark them");
    case PricedWork::closing_test: return w("push it home and try it on the machine");
    case PricedWork::pieces: return w("measure and deburr the pieces");
    case PricedWork::outer_yoke: return w("fix the outer tube in its yoke");
    case PricedWork::inner_yoke: return w("fix the inner tube in its yoke");
    case PricedWork::crosses: return w("press the crosses in");
    case PricedWork::closed: return w("push it home and measure it");
    case PricedWork::guards: return w("fit the guards");
    case PricedWork::join: return w("join the halves");
    case PricedWork::fittings: return w("fit devices and locks");
    case PricedWork::chains: return w("hang the chains");
    case PricedWork::papers: break;
    }
    return w("label, plate and papers");
}

std::string say_one(const Labour& labour, const Wording& w) { return say_work(labour.work, w); }
std::string say_one(const PartSold& part, const Wording& w) { return say(part.part, w); }
std::string say_one(const TubeSold& tube, const Wording&) { return tube.profile; }
std::string say_one(const ShaftSold& shaft, const Wording& w) { return w("new shaft {series}, {length} closed", {{"series", shaft.series}, {"length", w.length(Rounded::measured, shaft.closed)}}); }
// What is done to a machine has names that the program knows; every other service has the workshop's own.
std::string say_one(const Service& service, const Wording& w)
{
    const auto change = from_word<MachineChange>(service.name);
    return change ? w("{change:a stop on the lift|a stop on the drawbar|another hole for the hitch pin|a stop at the machine}", {{"change", *change}}) : service.name;
}
std::string say_one(const MinimumCharge&, const Wording& w) { return w("up to the minimum charge"); }
std::string say_one(const Discount& discount, const Wording& w)
{
    return discount.percent ? w("discount of {percent}", {{"percent", say(*discount.percent, w)}}) : w("discount");
}

// What is changed at the machine, so that this shaft will do.
class ChangeWords {
public:
    ChangeWords(bool is_cut, const Wording& w) : cut_{"cut", is_cut}, w_(w) {}

    std::string operator()(const LiftRangeServed& way) const
    {
        if (way.up_to)
            return w_("a stop on the lift, so that the lower hitch point never stands higher than {height} above the ground; {cut:this shaft stays as it is|this shaft is cut}",
                      {{"height", w_.length(Rounded::shortest, *way.up_to)}, cut_});
        return w_("a stop on the lift, so that the lower hitch point never stands lower than {height} above the ground; {cut:this shaft stays as it is|this shaft is cut}",
                  {{"height", w_.length(Rounded::longest, way.down_to.value())}, cut_});
    }
    std::string operator()(const TurnServed& way) const
    {
        return w_("a stop, so that the machine never turns further than {angle} to either side; {cut:this shaft stays as it is|this shaft is cut}", {{"angle", w_.angle(way.served)}, cut_});
    }
    std::string operator()(const PitchServed& way) const
    {
        return w_("a stop, so that the machine never pitches further than {angle} up or down; {cut:this shaft stays as it is|this shaft is cut}", {{"angle", w_.angle(way.served)}, cut_});
    }
    std::string operator()(const PinMoveServed& way) const
    {
        const bool forwards = way.move < Length();
        return w_("another hole for the hitch pin, {distance} further {forwards:back|forwards}; {cut:this shaft stays as it is|this shaft is cut}",
                  {{"distance", w_.length(Rounded::measured, forwards ? -way.move : way.move)}, {"forwards", forwards}, cut_});
    }
    std::string operator()(const LongestServed& way) const
    {
        return w_("a stop at the machine, so that the {range:working position|furthest position with the PTO turning|furthest position with the PTO stopped} is not so far out; "
                  "{cut:this shaft stays as it is|this shaft is cut}",
                  {{"range", way.range}, cut_});
    }
    std::string operator()(const ShortestServed&) const
    {
        return w_("a stop at the machine, so that it never comes so near to the tractor; {cut:this shaft stays as it is|this shaft is cut}", {cut_});
    }
    std::string operator()(const LimitMovement& way) const
    {
        return w_("a stop, so that the machine never {movement:turns|is lifted|turns or is lifted} so far; {cut:this shaft stays as it is|this shaft is cut}", {{"movement", way.movement}, cut_});
    }
    // No other way out is a change at the machine.
    template <class Other>
    std::string operator()(const Other&) const { return w_("a change at the machine; {cut:this shaft stays as it is|this shaft is cut}", {cut_}); }

private:
    NamedValue cut_;
    const Wording& w_;
};

std::string say_change(const WayOut& way, bool is_cut, const Wording& w) { return std::visit(ChangeWords(is_cut, w), way); }

std::string attribute_value(const std::string& name) { return "\"" + name + "\""; }

}  // namespace

std::string say(const LineFor& what, const Wording& w)
{
    return std::visit([&](const auto& one) { return say_one(one, w); }, what);
}

std::string say_not_priced(const QuoteLine& line, const Wording& w)
{
    const std::string name = say(line.what, w);
    const NamedValue stated{"name", attribute_value(name)};
    switch (line.missing.value()) {
    case NotPriced::minutes: return w("its minutes are not stated; write operation name={name} minutes=… in workshop.xml", {{"name", attribute_value(to_word(std::get<Labour>(line.what).work))}});
    case NotPriced::hourly_rate: return w("the hourly rate is not stated; write hourly-rate=… in prices of workshop.xml");
    case NotPriced::part: return w("no price is stated; write item part={name} each=… in workshop.xml, or a line in prices.csv", {stated});
    case NotPriced::profile: return w("no price is stated; write item profile={name} per-metre=… in workshop.xml, or a line in prices.csv", {stated});
    case NotPriced::shaft: {
        const auto& shaft = std::get<ShaftSold>(line.what);
        return w("no price is stated; write item series={series} closed-length={length} each=… in workshop.xml",
                 {{"series", attribute_value(shaft.series)}, {"length", attribute_value(figure_with_unit(shaft.closed, Units::mm))}});
    }
    case NotPriced::service: break;
    }
    return w("no price is stated; write item service={name} each=… in workshop.xml", {{"name", attribute_value(std::get<Service>(line.what).name)}});
}

std::string say(QuoteVerdict verdict, const Wording& w) { return w("{verdict:COMPLETE|INCOMPLETE|DO NOT CUT|ESTIMATE BEFORE MEASURING}", {{"verdict", verdict}}); }

std::string say(const Alternative& alternative, const Wording& w)
{
    const NamedValue cut{"cut", alternative.is_cut}, series{"series", alternative.series};
    switch (alternative.kind) {
    case AlternativeKind::change_at_machine: return say_change(alternative.change.value(), alternative.is_cut, w);
    case AlternativeKind::this_shaft: return w("this shaft{cut:, as it is|, cut}", {cut});
    case AlternativeKind::new_shaft:
        return w("a new shaft {series}, {length} closed, {cut:as it is|then cut}", {series, {"length", w.length(Rounded::measured, alternative.closed.value())}, cut});
    case AlternativeKind::made_to_order: break;
    }
    return w("a shaft {series} made to order", {series});
}

std::string no_alternative(const Wording& w)
{
    return w("nothing was found that the checks accept; shafts of other series are looked for where lengths run between grooves or come from the machine's geometry, and both connections are stated");
}

std::string no_prices(const Wording& w) { return w("workshop.xml states no prices; write prices with currency, tax, tax-name and stated there"); }

std::string no_discount(const std::string& text, int decimals, const Wording& w)
{
    return w("--discount {text} is no discount; write a percentage above 0% and up to 100%, such as 5%, or an amount above 0 with at most {decimals} decimals", {{"text", quoted(text)}, {"decimals", decimals}});
}

std::string no_quantity(const std::string& text, const Wording& w)
{
    return w("quantity {text} is none of a line; write the line's number, a colon and a figure from 0 to 1000000, such as 2:12.5", {{"text", quoted(text)}});
}

std::string no_such_line(const Wording& w) { return w("a quantity is asked of a line that there is not, or that has none of its own"); }

std::string discount_too_great(const std::string& text, const Wording& w)
{
    return w("--discount {text} is more than there is to pay at the rate that it is taken off; write a smaller one", {{"text", quoted(text)}});
}

std::string too_great(const Wording& w) { return w("the amounts are too great to be counted; check prices and counts"); }

std::string no_such_service(const std::string& name, const std::string& nearest, const std::vector<std::string>& known, const Wording& w)
{
    const NamedValue asked{"name", quoted(name)}, there{"known", w.all_of(known)};
    if (known.empty()) return w("--service {name} is not known; workshop.xml prices no service", {asked});
    if (nearest.empty()) return w("--service {name} is not known; workshop.xml prices {known}", {asked, there});
    return w("--service {name} is not known; did you mean {nearest}? workshop.xml prices {known}", {asked, {"nearest", quoted(nearest)}, there});
}

}  // namespace shaftcut
