// Lists of orders as CSV: one order a line.
#include <algorithm>

#include "csv/csv.hpp"
#include "order_number.hpp"
#include "orders_reader.hpp"
#include "source/outside_bounds.hpp"
#include "source/known_names.hpp"
#include "text.hpp"
#include "xml/element.hpp"

namespace shaftcut {
namespace {


// In the order of column_list().
enum class Column {
    order, count, series, role, speed, inner_tube, tractor_joint, tractor_connection, tractor_lock, tractor_device, implement_joint,
    implement_connection, implement_lock, implement_device, guard, closed, closed_reference, shortest, longest_working, longest_turning,
    longest_standing, fit_between, fit_reference, customer, machine, due
};

const std::vector<CsvColumn>& column_list()
{
    static const std::vector<CsvColumn> columns{
        {"order", true},                 {"count", false},           {"series", true},          {"role", true},            {"speed", false},
        {"inner_tube", true},            {"tractor_joint", true},    {"tractor_connection", false}, {"tractor_lock", false}, {"tractor_device", false},
        {"implement_joint", true},       {"implement_connection", false}, {"implement_lock", false}, {"implement_device", false}, {"guard", false},
        {"closed", false},               {"closed_reference", false}, {"shortest", false},      {"longest_working", false}, {"longest_turning", false},
        {"longest_standing", false},     {"fit_between", false},     {"fit_reference", false},  {"customer", false},       {"machine", false},
        {"due", false}};
    return columns;
}

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
    LineReader(const CsvRow& cells, const ListSetting& setting, Faults& faults) : cells_(cells), setting_(setting), faults_(faults) {}

    BuildOrder read()
    {
        read_heading();
        read_shaft();
        read_lengths();
        check_series();
        return std::move(order_);
    }

private:
    const CsvCell& cell(Column column) const { return cells_[static_cast<std::size_t>(column)]; }
    Place place(Column column) const { return faults_.place(cell(column).spot); }
    bool given(Column column) const { return !cell(column).text.empty(); }
    const std::string& name(Column column) const { return column_list()[static_cast<std::size_t>(column)].name; }

    void fault(Column column, std::string wrong, std::string right)
    {
        faults_.add(cell(column).spot, std::move(wrong), std::move(right));
    }

    void must_be_given(Column column, const std::string& right)
    {
        if (!given(column)) fault(column, name(column) + " is empty", right);
    }

    template <class T>
    std::optional<T> taken(Column column, const Parsed<T>& parsed)
    {
        if (const auto* wrong = std::get_if<ParseFault>(&parsed)) {
            fault(column, name(column) + " " + wrong->wrong, wrong->right);
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
        const std::string near = nearest_name(cell(column).text, words_of<E>());
        fault(column, name(column) + " " + quoted(cell(column).text) + " is not known", (near.empty() ? "" : "did you mean " + near + "? ") + ("write " + listed(words_of<E>())));
        return std::nullopt;
    }

    template <class E>
    E required_word(Column column, E otherwise)
    {
        must_be_given(column, "write " + listed(words_of<E>()));
        return word<E>(column).value_or(otherwise);
    }

    // Of a shaft that closes or reaches so far; `what` begins what is said of the bounds.
    std::optional<Measurement> length(Column column, const char* what)
    {
        if (!given(column)) return std::nullopt;
        const auto length = taken(column, parse_length(cell(column).text, setting_.units));
        const auto wrong = length ? outside_bounds(*length, telescoping_bounds, what) : std::nullopt;
        if (wrong) fault(column, name(column) + " " + quoted(cell(column).text) + " " + wrong->wrong, wrong->right);
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
        fault(column, name(column) + " " + quoted(cell(column).text) + " is not in " + known.what(), known.instead_of(cell(column).text));
        return std::nullopt;
    }

    std::string text(Column column)
    {
        if (code_points(cell(column).text).size() > most_text_characters)
            fault(column, name(column) + " is longer than " + std::to_string(most_text_characters) + " characters", "write less");
        return cell(column).text;
    }

    void read_heading()
    {
        order_.order = cell(Column::order).text;
        order_.place = place(Column::order);
        order_.units = setting_.units;
        for (const ParseFault& wrong : order_faults(order_.order)) fault(Column::order, wrong.wrong, wrong.right);
        order_.count = whole(Column::count, most_shafts_of_an_order).value_or(1);
        order_.customer = text(Column::customer);
        order_.machine = text(Column::machine);
        order_.due = cell(Column::due).text;
        if (!order_.due.empty())
            for (const ParseFault& wrong : date_faults(order_.due)) fault(Column::due, wrong.wrong, wrong.right);
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
        must_be_given(Column::series, "write the name of a series of the catalogue");
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
        order_.closed = length(Column::closed, "a closed length is");
        JobFit fit;
        fit.place = place(Column::shortest);
        fit.shortest = length(Column::shortest, "a shortest length is");
        fit.longest[Range::working] = length(Column::longest_working, "a longest length is");
        fit.longest[Range::turning] = length(Column::longest_turning, "a longest length is");
        fit.longest[Range::standing] = length(Column::longest_standing, "a longest length is");
        fit.between = word<Between>(Column::fit_between).value_or(Between::crosses);
        fit.reference = word<Reference>(Column::fit_reference);
        const bool has_fit = fit.shortest || std::any_of(all_ranges.begin(), all_ranges.end(), [&](Range range) { return fit.longest[range].has_value(); });
        if (has_fit) check_fit(fit);
        else check_no_fit();
        if (has_fit) order_.fits.push_back(std::move(fit));
    }

    void check_fit(const JobFit& fit)
    {
        if (order_.closed) fault(Column::closed, "closed stands beside lengths of a fit", "leave one of them out: the shaft is made to the one or to the other");
        must_be_given(Column::shortest, "write the shortest length, beside longest_turning");
        must_be_given(Column::longest_turning, "write the longest length with the PTO turning, beside shortest");
        if (fit.between == Between::grooves && fit.reference) fault(Column::fit_reference, "fit_reference says nothing between grooves", "leave it empty, or write crosses in fit_between");
    }

    void check_no_fit()
    {
        if (!order_.closed) fault(Column::order, "the order states neither closed nor shortest and longest_turning", "write the one or the others");
        for (const Column column : {Column::fit_between, Column::fit_reference})
            if (given(column)) fault(column, name(column) + " says nothing without shortest and longest", "leave it empty");
    }

    void check_series()
    {
        const JobShaft& shaft = order_.shaft;
        if (!shaft.series) return;
        const Series& series = *find_series(setting_.catalogue, *shaft.series);
        const auto check_joint = [&](End end, Column joint) {
            if (shaft.ends[end].joint != JointKind::wide_angle) return false;
            if (!series.wide_angle)
                fault(joint, name(joint) + " \"wide-angle\", but series " + quoted(series.name) + " has no wide-angle joint", "write standard, or another series");
            return true;
        };
        const bool at_tractor = check_joint(End::tractor, Column::tractor_joint);
        const bool at_implement = check_joint(End::implement, Column::implement_joint);
        if (!series.wide_angle || (!at_tractor && !at_implement)) return;
        if (series.wide_angle_reference || usual_reference(series.shape) || shaft.closed_reference) return;
        const bool of_fit = !order_.fits.empty();
        if (of_fit && (order_.fits.front().between == Between::grooves || order_.fits.front().reference)) return;
        const Column column = of_fit ? Column::fit_reference : Column::closed_reference;
        fault(column, name(column) + " is empty, and series " + quoted(series.name) + " does not state a reference", "write outer-cross or inner-cross");
    }

    const CsvRow& cells_;
    const ListSetting& setting_;
    Faults& faults_;
    BuildOrder order_;
};

}  // namespace

OrderList read_orders_csv(const Source& source, const Catalogue& catalogue, Units units)
{
    OrderList list{{}, {}, units};
    const ListSetting setting{catalogue, units, {names_in(catalogue.series, "the catalogue"), names_in(catalogue.connections, "the catalogue")}};
    OrderNumbers met;
    bool empty = true;
    Faults faults = read_csv(source.bytes, source.name, column_list(), {most_orders, "orders"}, [&](const CsvRow& cells, Faults& found) {
        empty = false;
        const std::size_t before = found.count();
        BuildOrder order = LineReader(cells, setting, found).read();
        if (!order.order.empty())
            if (const auto twice = met.add(order.order, order.place.line)) found.add({order.place.line, order.place.column}, twice->wrong, twice->right);
        if (found.count() == before) list.orders.push_back(std::move(order));
    });
    if (empty && faults.none()) faults.add({1, 1}, "the list holds no order", "write one a line under its header");
    list.problems = faults.listed();
    return list;
}

}  // namespace shaftcut
