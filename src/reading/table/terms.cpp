#include "table/terms.hpp"

#include <algorithm>

#include "text.hpp"

namespace shaftcut {
namespace {

using Words = std::vector<std::string>;

struct Term {
    std::string file_word;
    Words words;
};

// As in config/languages/terms.md, row by row.
const std::vector<Term>& headings()
{
    static const std::vector<Term> terms{
        {"order", {"order no", "order number", "Auftrag", "Auftragsnummer", "Auftragsnr", "order", "ordernummer", "opdrachtnummer", "commande", "numéro de commande", "zamówienie", "numer zamówienia", "pedido", "número de pedido"}},
        {"count", {"quantity", "pieces", "Anzahl", "Stück", "Stückzahl", "Menge", "aantal", "stuks", "quantité", "nombre", "ilość", "liczba sztuk", "cantidad", "unidades"}},
        {"series", {"series", "Baureihe", "Serie", "serie", "bouwreeks", "série", "gamme", "seria"}},
        {"role", {"role", "Rolle", "rol", "rôle", "rola", "función"}},
        {"speed", {"speed", "pto speed", "Drehzahl", "Zapfwellendrehzahl", "toerental", "aftakastoerental", "régime", "vitesse de rotation", "prędkość obrotowa", "régimen", "velocidad de giro"}},
        {"inner_tube", {"inner tube at", "Innenrohr", "Innenrohr an", "binnenbuis", "binnenbuis aan", "tube intérieur", "tube intérieur côté", "rura wewnętrzna", "tubo interior", "tubo interior en"}},
        {"tractor_joint", {"joint at the tractor", "Gelenk traktorseitig", "Gelenk Traktor", "koppeling trekkerzijde", "kruiskoppeling trekkerzijde", "joint côté tracteur", "cardan côté tracteur", "przegub od strony ciągnika", "junta lado tractor"}},
        {"tractor_connection", {"connection at the tractor", "Anschluss traktorseitig", "Profil Traktor", "aansluiting trekkerzijde", "raccordement côté tracteur", "przyłącze od strony ciągnika", "conexión lado tractor"}},
        {"tractor_lock", {"lock at the tractor", "Verriegelung traktorseitig", "Verschluss Traktor", "vergrendeling trekkerzijde", "verrouillage côté tracteur", "blokada od strony ciągnika", "bloqueo lado tractor"}},
        {"tractor_device", {"clutch at the tractor", "Kupplung traktorseitig", "Kupplung Traktor", "beveiliging trekkerzijde", "limiteur côté tracteur", "sprzęgło od strony ciągnika", "embrague lado tractor"}},
        {"implement_joint", {"joint at the implement", "Gelenk geräteseitig", "Gelenk Gerät", "Gelenk maschinenseitig", "koppeling werktuigzijde", "kruiskoppeling werktuigzijde", "joint côté machine", "cardan côté machine", "przegub od strony maszyny", "junta lado máquina"}},
        {"implement_connection", {"connection at the implement", "Anschluss geräteseitig", "Anschluss maschinenseitig", "Profil Gerät", "aansluiting werktuigzijde", "raccordement côté machine", "przyłącze od strony maszyny", "conexión lado máquina"}},
        {"implement_lock", {"lock at the implement", "Verriegelung geräteseitig", "Verschluss Gerät", "vergrendeling werktuigzijde", "verrouillage côté machine", "blokada od strony maszyny", "bloqueo lado máquina"}},
        {"implement_device", {"clutch at the implement", "Kupplung geräteseitig", "Kupplung Gerät", "beveiliging werktuigzijde", "limiteur côté machine", "sprzęgło od strony maszyny", "embrague lado máquina"}},
        {"guard", {"guard", "Schutz", "Schutzeinrichtung", "afscherming", "beschermkap", "protecteur", "protection", "osłona", "protección", "resguardo"}},
        {"closed", {"closed length", "Länge geschlossen", "Länge eingeschoben", "geschlossene Länge", "ingeschoven lengte", "gesloten lengte", "longueur fermée", "longueur repliée", "długość zsunięta", "długość złożona", "longitud cerrada", "longitud plegada"}},
        {"closed_reference", {"closed from", "geschlossen gemessen ab", "gesloten gemeten vanaf", "longueur fermée depuis", "długość zsunięta od", "longitud cerrada desde"}},
        {"shortest", {"shortest length", "kürzeste Länge", "kürzeste Einbaulänge", "kortste lengte", "longueur minimale", "longueur la plus courte", "najkrótsza długość", "longitud mínima"}},
        {"longest_working", {"longest working length", "längste Arbeitslänge", "langste werklengte", "longueur maximale au travail", "największa długość robocza", "longitud máxima de trabajo"}},
        {"longest_turning", {"longest length turning", "längste Länge laufend", "langste lengte draaiend", "longueur maximale en rotation", "największa długość w ruchu", "longitud máxima en giro"}},
        {"longest_standing", {"longest length standing", "längste Länge stehend", "langste lengte stilstaand", "longueur maximale à l'arrêt", "największa długość w spoczynku", "longitud máxima en reposo"}},
        {"fit_between", {"measured between", "gemessen zwischen", "gemeten tussen", "mesuré entre", "mierzone między", "medido entre"}},
        {"fit_reference", {"measured from", "gemessen ab", "gemeten vanaf", "mesuré depuis", "mierzone od", "medido desde"}},
        {"customer", {"customer", "Kunde", "klant", "client", "klient", "cliente"}},
        {"machine", {"machine", "implement", "Maschine", "Gerät", "werktuig", "outil", "maszyna", "máquina", "apero"}},
        {"due", {"due date", "delivery date", "Liefertermin", "Termin", "Lieferdatum", "leverdatum", "levertijd", "date de livraison", "délai", "termin dostawy", "data dostawy", "fecha de entrega", "entrega"}},
        {"length", {"length", "Länge", "lengte", "longueur", "długość", "longitud"}},
        {"label", {"label", "mark", "Bezeichnung", "Beschriftung", "omschrijving", "opschrift", "désignation", "repère", "oznaczenie", "opis", "designación", "etiqueta"}},
        {"cost", {"cost", "price", "Kosten", "Preis", "kosten", "prijs", "coût", "prix", "koszt", "cena", "coste", "precio"}},
        {"profile", {"profile", "tube", "Profil", "Rohr", "profiel", "buis", "profilé", "profil", "rura", "perfil", "tubo"}},
    };
    return terms;
}

const std::vector<Term>& values()
{
    static const std::vector<Term> terms{
        {"primary", {"primary", "primär", "Primärwelle", "primair", "primaire", "główny", "pierwotny", "primario", "primaria"}},
        {"secondary", {"secondary", "sekundär", "Sekundärwelle", "secundair", "secondaire", "wtórny", "secundario", "secundaria"}},
        {"tractor", {"tractor", "Traktor", "Schlepper", "trekker", "tracteur", "ciągnik"}},
        {"implement", {"implement", "machine", "Gerät", "Maschine", "werktuig", "outil", "maszyna", "máquina", "apero"}},
        {"standard", {"standard", "Standard", "Normalgelenk", "einfach", "standaard", "simple", "standardowy", "zwykły", "estándar"}},
        {"wide-angle", {"wide angle", "Weitwinkel", "Weitwinkelgelenk", "groothoek", "groothoekkoppeling", "grand angle", "szerokokątny", "gran angular", "gran ángulo"}},
        {"outer-cross", {"outer cross", "äußeres Kreuz", "äusseres Kreuz", "buitenste kruis", "croisillon extérieur", "krzyżak zewnętrzny", "cruceta exterior"}},
        {"inner-cross", {"inner cross", "inneres Kreuz", "binnenste kruis", "croisillon intérieur", "krzyżak wewnętrzny", "cruceta interior"}},
        {"crosses", {"crosses", "Kreuze", "Kreuzgelenkmitten", "kruisen", "croisillons", "krzyżaki", "crucetas"}},
        {"grooves", {"grooves", "Nuten", "Ringnuten", "groeven", "gorges", "rowki", "ranuras"}},
        {"yes", {"yes", "y", "ja", "oui", "tak", "sí", "si"}},
        {"no", {"no", "n", "nein", "nee", "non", "nie"}},
    };
    return terms;
}

// A small letter for a capital one of the six languages: ASCII, Latin-1, Latin Extended-A.
char32_t small(char32_t c)
{
    if ((c >= U'A' && c <= U'Z') || (c >= 0xC0 && c <= 0xDE && c != 0xD7)) return c + 32;
    const bool odd_is_capital = (c >= 0x139 && c <= 0x148) || (c >= 0x179 && c <= 0x17E);
    if (c < 0x100 || c > 0x17E || c == 0x178) return c;
    return (c % 2 == 1) == odd_is_capital ? c + 1 : c;
}

// What two writings of a word have in common.
std::u32string key_of(std::string_view word)
{
    std::u32string key;
    for (const char32_t c : code_points(word))
        if (std::u32string_view(U" -_.:").find(c) == std::u32string_view::npos) key += small(c);
    return key;
}

bool says(const Term& term, std::string_view word)
{
    const std::u32string key = key_of(word);
    return key == key_of(term.file_word) || std::any_of(term.words.begin(), term.words.end(), [&](const std::string& one) { return key == key_of(one); });
}

}  // namespace

bool is_heading_of(std::string_view text, std::string_view column)
{
    const auto term = std::find_if(headings().begin(), headings().end(), [&](const Term& one) { return one.file_word == column; });
    return text == column || (!text.empty() && term != headings().end() && says(*term, text));
}

std::vector<std::string> headings_of(std::string_view column)
{
    const auto term = std::find_if(headings().begin(), headings().end(), [&](const Term& one) { return one.file_word == column; });
    return term == headings().end() ? Words() : term->words;
}

std::string file_word_of(const std::string& text)
{
    if (text.empty()) return text;
    const auto term = std::find_if(values().begin(), values().end(), [&](const Term& one) { return says(one, text); });
    return term == values().end() ? text : term->file_word;
}

}  // namespace shaftcut
