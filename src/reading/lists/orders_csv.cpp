// Lists of orders as CSV: one order a line.
#include <algorithm>

#include "lists/list_reader.hpp"
#include "lists/mapped_articles.hpp"
#include "order_number.hpp"
#include "lists/orders_reader.hpp"
#include "source/bounds_of.hpp"
#include "source/known_names.hpp"
#include "text.hpp"
#include "xml/element.hpp"

namespace shaftcut {
namespace {

using Column = OrderColumn;

// The names that a list may use, sorted once for all its lines.
struct Names {
    KnownNames series, connections;
};

struct ListSetting {
    const Catalogue& catalogue;
    Units units;
    Names names;
};

// Reads one line into an order.
class LineReader {
public:
    LineReader(TableRow cells, const ListSetting& setting, Faults& faults) : cells_(std::move(cells)), setting_(setting), faults_(faults) {}

    BuildOrder read()
    {
        read_heading();
        read_shaft();
        read_lengths();
        check_series();
        return std::move(order_);
    }

private:
    const TableCell& cell(Column column) const { return cells_[static_cast<std::size_t>(column)]; }
    Place place(Column column) const { return faults_.place(cell(column).spot); }
    bool given(Column column) const { return !cell(column).text.empty(); }
    // What it would have said is not missing.
    bool article_unknown() const { return cells_.size() > static_cast<std::size_t>(Column::article) && cell(Column::article).in_doubt; }
    static std::string name(Column column) { return to_word(column); }

    Stated stated(Column column) const { return {name(column), cell(column).text}; }

    void fault(Column column, FaultFinding what) { faults_.add(where(cell(column)), std::move(what)); }

    void must_be_given(Column column, EmptyOf what, std::vector<std::string> words = {})
    {
        if (!given(column) && !article_unknown()) fault(column, Empty{what, name(column), std::move(words)});
    }

    template <class T>
    std::optional<T> taken(Column column, const Parsed<T>& parsed)
    {
        if (const auto* wrong = std::get_if<ParseFault>(&parsed)) {
            if (!cell(column).in_doubt) fault(column, UnreadableValue{name(column), *wrong});
            return std::nullopt;
        }
        return std::get<T>(parsed);
    }

    template <class E>
    std::optional<E> word(Column column)
    {
        if (!given(column)) return std::nullopt;
        const auto found = from_word<E>(cell(column).text);
        if (found) return found;
        fault(column, UnknownWord{stated(column), words_of<E>(), nearest_name(cell(column).text, words_of<E>())});
        return std::nullopt;
    }

    template <class E>
    E required_word(Column column, E otherwise)
    {
        must_be_given(column, EmptyOf::word, words_of<E>());
        return word<E>(column).value_or(otherwise);
    }

    // Of a shaft that closes or reaches so far.
    std::optional<Measurement> length(Column column, Bounded kind)
    {
        if (!given(column)) return std::nullopt;
        const auto length = taken(column, parse_length(cell(column).text, setting_.units));
        if (length && !cell(column).in_doubt && !bounds_of(kind).hold(*length)) fault(column, OutsideBounds{kind, stated(column), *length});
        return Measurement{length.value_or(Length()), std::nullopt, place(column)};
    }

    std::optional<int> whole(Column column, int most)
    {
        if (!given(column)) return std::nullopt;
        const auto value = taken(column, parse_whole(cell(column).text, 1, most));
        return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
    }

    std::optional<std::string> one_of(Column column, const KnownNames& known)
    {
        if (!given(column)) return std::nullopt;
        if (known.holds(cell(column).text)) return cell(column).text;
        fault(column, known.unknown(stated(column)));
        return std::nullopt;
    }

    std::string text(Column column)
    {
        const std::size_t characters = code_points(cell(column).text).size();
        if (characters > most_text_characters) fault(column, TooLong{TextOf::column, stated(column), characters, most_text_characters});
        return cell(column).text;
    }

    void read_heading()
    {
        order_.order = cell(Column::order).text;
        order_.place = place(Column::order);
        order_.units = setting_.units;
        if (!cell(Column::order).in_doubt)
            for (WrongValue& wrong : listed_order_faults(order_.order)) fault(Column::order, std::move(wrong));
        order_.count = whole(Column::count, most_shafts_of_an_order).value_or(1);
        order_.customer = text(Column::customer);
        order_.machine = text(Column::machine);
        order_.due = cell(Column::due).text;
        if (!order_.due.empty() && !cell(Column::due).in_doubt)
            for (WrongValue& wrong : date_faults(order_.due)) fault(Column::due, std::move(wrong));
    }

    JobEnd read_end(Column joint, Column connection, Column lock, Column device)
    {
        JobEnd end;
        end.joint = required_word(joint, JointKind::standard);
        end.connection = one_of(connection, setting_.names.connections);
        end.lock = word<Lock>(lock);
        end.device = word<Device>(device).value_or(Device::none);
        end.place = place(joint);
        return end;
    }

    void read_shaft()
    {
        JobShaft& shaft = order_.shaft;
        shaft.place = order_.place;
        must_be_given(Column::series, EmptyOf::series);
        shaft.series = one_of(Column::series, setting_.names.series);
        shaft.role = required_word(Column::role, Role::primary);
        shaft.speed = whole(Column::speed, most_speed);
        shaft.inner_tube = required_word(Column::inner_tube, End::implement);
        shaft.ends[End::tractor] = read_end(Column::tractor_joint, Column::tractor_connection, Column::tractor_lock, Column::tractor_device);
        shaft.ends[End::implement] = read_end(Column::implement_joint, Column::implement_connection, Column::implement_lock, Column::implement_device);
        shaft.closed_reference = word<Reference>(Column::closed_reference);
        order_.guard = word<Guarded>(Column::guard).value_or(Guarded::yes) == Guarded::yes;
    }

    void read_lengths()
    {
        order_.closed = length(Column::closed, Bounded::closed);
        JobFit fit;
        fit.place = place(Column::shortest);
        fit.shortest = length(Column::shortest, Bounded::shortest);
        fit.longest[Range::working] = length(Column::longest_working, Bounded::longest);
        fit.longest[Range::turning] = length(Column::longest_turning, Bounded::longest);
        fit.longest[Range::standing] = length(Column::longest_standing, Bounded::longest);
        fit.between = word<Between>(Column::fit_between).value_or(Between::crosses);
        fit.reference = word<Reference>(Column::fit_reference);
        const bool has_fit = fit.shortest || std::any_of(all_ranges.begin(), all_ranges.end(), [&](Range range) { return fit.longest[range].has_value(); });
        if (has_fit) check_fit(fit);
        else check_no_fit();
        if (has_fit) order_.fits.push_back(std::move(fit));
    }

    void check_fit(const JobFit& fit)
    {
        if (order_.closed) fault(Column::closed, Contradiction::column_closed_and_fit);
        must_be_given(Column::shortest, EmptyOf::shortest);
        must_be_given(Column::longest_turning, EmptyOf::longest_turning);
        if (fit.between == Between::grooves && fit.reference) fault(Column::fit_reference, Contradiction::column_reference_of_grooves);
    }

    void check_no_fit()
    {
        if (!order_.closed && !article_unknown()) fault(Column::order, Contradiction::column_neither_closed_nor_fit);
        for (const Column column : {Column::fit_between, Column::fit_reference})
            if (given(column)) fault(column, WithoutFit{name(column)});
    }

    void check_series()
    {
        const JobShaft& shaft = order_.shaft;
        if (!shaft.series) return;
        const Series& series = *find_series(setting_.catalogue, *shaft.series);
        const auto check_joint = [&](End end, Column joint) {
            if (shaft.ends[end].joint != JointKind::wide_angle) return false;
            if (!series.wide_angle) fault(joint, NoWideAngle{series.name, name(joint)});
            return true;
        };
        const bool at_tractor = check_joint(End::tractor, Column::tractor_joint);
        const bool at_implement = check_joint(End::implement, Column::implement_joint);
        if (!series.wide_angle || (!at_tractor && !at_implement)) return;
        if (series.wide_angle_reference || usual_reference(series.shape) || shaft.closed_reference) return;
        const bool of_fit = !order_.fits.empty();
        if (of_fit && (order_.fits.front().between == Between::grooves || order_.fits.front().reference)) return;
        const Column column = of_fit ? Column::fit_reference : Column::closed_reference;
        fault(column, NoReference{ReferenceOf::column, series.name, name(column)});
    }

    const TableRow cells_;
    const ListSetting& setting_;
    Faults& faults_;
    BuildOrder order_;
};

}  // namespace

OrderList read_orders_csv(const Source& source, const Catalogue& catalogue, Units units, const ListMap* map)
{
    OrderList list{{}, {}, map ? map->units.value_or(units) : units};
    const ListSetting setting{catalogue, list.units, {names_in(catalogue.series, NamesOf::the_catalogue), names_in(catalogue.connections, NamesOf::the_catalogue)}};
    const std::vector<TableColumn> columns = order_columns(map);
    OrderNumbers met;
    bool empty = true;
    Faults faults = read_list(source.bytes, source.name, columns, {most_orders, ManyOf::orders}, [&](const TableRow& cells, Faults& found) {
        empty = false;
        const std::size_t before = found.count();
        BuildOrder order = LineReader(map ? with_article(cells, *map, list.units, found) : cells, setting, found).read();
        if (!order.order.empty())
            if (const auto second = met.add(order.order, order.place.line)) found.add(where(cells[0]), *second);
        const bool in_doubt = std::any_of(cells.begin(), cells.end(), [](const TableCell& cell) { return cell.in_doubt; });  // its fault was counted before
        if (found.count() == before && !in_doubt) list.orders.push_back(std::move(order));
    });
    if (empty && faults.none()) faults.add(Spot{}, Contradiction::no_order_in_list);
    std::erase_if(list.orders, [&](const BuildOrder& order) { return met.met_twice(order.order); });
    list.faults = faults.listed();
    return list;
}

}  // namespace shaftcut
