#include "core/intake/csv/temperature_hint.h"

#include "core/intake/csv/header.h"
#include "core/intake/log/units.h"
#include "core/intake/log/values.h"
#include "core/text/name_suggestions.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <string>

namespace holdband::intake {

namespace {

/// Where probes of a cellar are. All words are folded.
constexpr std::array<std::string_view, 46> placeWords{
    "probe",     "sensor",  "sonde",   "fühler", "beer",   "bier",       "wort",    "würze",
    "mash",      "maische", "cellar",  "keller", "room",   "raum",       "ambient", "umgebung",
    "outside",   "außen",   "coolant", "glycol", "glykol", "tank",       "vessel",  "fermenter",
    "fermentor", "gärtank", "kettle",  "bath",   "fridge", "freezer",    "chamber", "cabinet",
    "jacket",    "loop",    "supply",  "return", "inlet",  "outlet",     "vorlauf", "rücklauf",
    "air",       "luft",    "water",   "wasser", "wall",   "kühlschrank"};

/// What numbers in a log are if they are no temperatures.
constexpr std::array<std::string_view, 77> otherWords{
    "humidity",   "rh",       "feuchte", "luftfeuchte", "luftfeuchtigkeit",
    "gravity",    "sg",       "og",      "fg",          "plato",
    "brix",       "density",  "dichte",  "extract",     "extrakt",
    "stammwürze", "abv",      "alcohol", "alkohol",     "attenuation",
    "battery",    "batt",     "akku",    "volt",        "volts",
    "voltage",    "spannung", "current", "strom",       "amps",
    "power",      "leistung", "energy",  "energie",     "pressure",
    "druck",      "ph",       "co2",     "level",       "füllstand",
    "volume",     "volumen",  "flow",    "durchfluss",  "speed",
    "drehzahl",   "rpm",      "duty",    "pwm",         "output",
    "rssi",       "signal",   "angle",   "tilt",        "neigung",
    "weight",     "gewicht",  "count",   "counter",     "zähler",
    "number",     "nr",       "no",      "id",          "index",
    "status",     "error",    "code",    "ratio",       "percent",
    "price",      "cost",     "elapsed", "interval",    "setpoint",
    "target",     "sollwert"};

/// Units of other quantities, in brackets or as a last word.
constexpr std::array<std::string_view, 34> otherUnits{
    "%",   "v",  "mv",  "a",  "ma", "bar", "mbar", "psi",   "kpa", "hpa", "pa", "ppm",
    "l",   "ml", "gal", "hl", "kg", "g",   "lb",   "oz",    "rpm", "hz",  "s",  "sec",
    "min", "h",  "hr",  "ms", "m",  "cm",  "dbm",  "l/min", "l/h", "lux"};

template <typename List>
bool holds(const List& list, std::string_view word)
{
    return std::find(list.begin(), list.end(), word) != list.end();
}

bool isLetterOrDigit(char c)
{
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0x80 || std::isalnum(byte) != 0;
}

std::vector<std::string> wordsOf(const std::string& text)
{
    std::vector<std::string> words(1);
    for (const char c : text) {
        if (isLetterOrDigit(c))
            words.back() += c;
        else if (!words.back().empty())
            words.emplace_back();
    }
    if (words.back().empty())
        words.pop_back();
    return words;
}

/// "beer" for "beer2"
std::string withoutNumber(const std::string& word)
{
    const std::size_t last = word.find_last_not_of("0123456789");
    return last == word.npos ? word : word.substr(0, last + 1);
}

/// "t1", "temp", "beer_temp", "kellertemperatur", "thermometer"
bool saysTemperature(const std::string& word)
{
    const std::string bare = withoutNumber(word);
    return bare == "t" || bare.starts_with("temp") || bare.starts_with("thermo") ||
           bare.ends_with("temp") || bare.find("temperat") != bare.npos;
}

/// "Humidity (%)", "RSSI dBm". A last letter alone may count the vessels and is no unit.
bool endsWithOtherUnit(const std::string& header)
{
    if (header.find('%') != header.npos)
        return true;
    const std::size_t open = header.find_last_of("([");
    if (open != header.npos && (header.ends_with(')') || header.ends_with(']')))
        return holds(otherUnits, header.substr(open + 1, header.size() - open - 2));
    const std::size_t gap = header.find_last_of(" _-");
    const std::string last = gap == header.npos ? std::string() : header.substr(gap + 1);
    return last.size() > 1 && last != "min" && holds(otherUnits, last);
}

enum class HeaderSays { nothing, temperature, place, other };

HeaderSays meaningOf(const std::string& header)
{
    if (endsWithOtherUnit(header))
        return HeaderSays::other;
    const auto words = wordsOf(header);
    const auto any = [&](auto is) { return std::any_of(words.begin(), words.end(), is); };
    if (any(saysTemperature))
        return HeaderSays::temperature;
    if (any([](const std::string& word) { return holds(otherWords, word); }))
        return HeaderSays::other;
    const bool place =
        any([](const std::string& word) { return holds(placeWords, withoutNumber(word)); });
    return place ? HeaderSays::place : HeaderSays::nothing;
}

/// The numbers of a column's first cells, in the file's order.
struct ColumnNumbers {
    std::vector<double> values;
    std::size_t filled = 0;
    std::size_t temperatures = 0; ///< with a unit of temperature behind the number
    std::size_t otherUnits = 0;

    explicit ColumnNumbers(const std::vector<std::string_view>& cells)
    {
        for (const std::string_view text : cells) {
            if (!isMissing(text))
                take(valueCell(text));
        }
    }

    bool isNumeric() const { return !values.empty() && values.size() * 2 >= filled; }
    double quantile(double share) const
    {
        std::vector<double> sorted = values;
        std::sort(sorted.begin(), sorted.end());
        return sorted[static_cast<std::size_t>(
            std::lround(share * static_cast<double>(sorted.size() - 1)))];
    }
    bool allWithin(double least, double most) const
    {
        return std::all_of(values.begin(), values.end(),
                           [&](double value) { return value >= least && value <= most; });
    }

private:
    void take(const ValueCell& cell)
    {
        ++filled;
        const auto point = scanGrouped(cell.number, '.');
        const auto number = point ? point : scanGrouped(cell.number, ',');
        if (!number)
            return;
        values.push_back(number->value);
        if (cell.unit)
            ++(fits(cell.unit->unit, SeriesKind::temperature) ? temperatures : otherUnits);
    }
};

/// In °C.
constexpr double coldest = -5.0;
constexpr double warmest = 45.0;

double asCelsius(double value, TemperatureUnit unit)
{
    return unit == TemperatureUnit::celsius ? value : (value - 32.0) / 1.8;
}

bool isPlausible(double value, TemperatureUnit unit)
{
    const double celsius = asCelsius(value, unit);
    return celsius >= coldest && celsius <= warmest;
}

/// A share, a gravity or a switch.
bool isNearOne(const ColumnNumbers& numbers)
{
    return numbers.allWithin(0.0, 1.3);
}

/// By the numbers alone: registers, counters and clocks rise throughout; codes are whole numbers.
bool readsLikeTemperature(const ColumnNumbers& numbers, TemperatureUnit unmarked)
{
    constexpr std::size_t fewest = 3;
    constexpr double widest = 30.0; // K, of eight in ten values
    const auto& values = numbers.values;
    if (values.size() < fewest || isNearOne(numbers) ||
        !isPlausible(numbers.quantile(0.5), unmarked))
        return false;
    const bool rises =
        std::is_sorted(values.begin(), values.end()) && values.front() < values.back();
    const bool fractions = std::any_of(values.begin(), values.end(),
                                       [](double value) { return value != std::floor(value); });
    const double spread =
        asCelsius(numbers.quantile(0.9), unmarked) - asCelsius(numbers.quantile(0.1), unmarked);
    return fractions && !rises && spread <= widest;
}

} // namespace

bool looksLikeTemperature(std::string_view header, const std::vector<std::string_view>& cells,
                          TemperatureUnit unmarked)
{
    const ColumnNumbers numbers(cells);
    if (!numbers.isNumeric() || numbers.otherUnits > 0)
        return false;
    const HeaderParts parts = headerParts(header);
    const bool letterAlone = !parts.inBrackets && parts.unitText.size() == 1;
    if (parts.unit && !fits(*parts.unit, SeriesKind::temperature))
        return false;
    if ((parts.unit && !letterAlone) || numbers.temperatures > 0)
        return true;
    constexpr double least = -55.0, most = 257.0; // what a probe can give, in °C or °F
    const double median = numbers.quantile(0.5);
    const bool plausible = isPlausible(median, TemperatureUnit::celsius) ||
                           isPlausible(median, TemperatureUnit::fahrenheit);
    switch (meaningOf(folded(header))) {
    case HeaderSays::other:
        return false;
    case HeaderSays::temperature:
        return median >= least && median <= most && !numbers.allWithin(0.0, 1.0);
    case HeaderSays::place:
        return plausible && !isNearOne(numbers);
    case HeaderSays::nothing:
        break;
    }
    return readsLikeTemperature(numbers, unmarked);
}

void markTemperatures(const Dialect& dialect, const SampleRows& rows, TemperatureUnit unmarked,
                      LogPreview& preview)
{
    const std::int64_t lastHeader = std::max(dialect.headerLine, dialect.unitsLine);
    for (std::size_t i = 0; i < preview.columns.size(); ++i) {
        ColumnGuess& column = preview.columns[i];
        if (column.choice.meaning != Meaning::ignored)
            continue;
        std::vector<std::string_view> cells;
        for (const SampleRow& row : rows) {
            if (row.line > lastHeader)
                cells.push_back(row.cell(i));
        }
        const std::string_view header = dialect.headerLine > 0 ? column.header : std::string_view();
        column.mayBeTemperature = looksLikeTemperature(header, cells, unmarked);
    }
}

std::vector<std::size_t> ignoredTemperatures(const LogPreview& preview, const ColumnMap& map)
{
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < std::min(preview.columns.size(), map.columns.size()); ++i) {
        if (preview.columns[i].mayBeTemperature && map.columns[i].meaning == Meaning::ignored)
            found.push_back(i);
    }
    return found;
}

} // namespace holdband::intake
