// Headers, units, and the meaning of a text in place of a number.
#include "core/intake/csv/header.h"
#include "core/intake/log/units.h"
#include "core/intake/log/values.h"
#include "core/intake/time/header_zone.h"

#include <gtest/gtest.h>

using namespace holdband;

namespace {

using Unit = std::optional<ReadingUnit>;

std::optional<ReadingUnit> readingUnit(std::string_view text)
{
    const auto unit = unitNamed(text);
    return unit ? std::optional(unit->unit) : std::nullopt;
}

ReadingUnit chosen(const std::string& name, const std::vector<std::string>& header,
                   std::size_t column, SeriesKind kind = SeriesKind::temperature)
{
    LogRequest request;
    request.fallbackUnit = TemperatureUnit::fahrenheit;
    const auto unit = chooseUnit({name, kind, {}, {}}, request, header, column);
    EXPECT_TRUE(unit.has_value());
    return unit->unit;
}

} // namespace

TEST(Header, unitsByTheirNames)
{
    for (const char* text : {"°F", "F", "degF", "deg F", "Fahrenheit", "º F", "℉", "°f", "DEG_F"})
        EXPECT_EQ(readingUnit(text), Unit(ReadingUnit::fahrenheit)) << text;
    for (const char* text : {"°C", "C", "degC", "Celsius", "℃"})
        EXPECT_EQ(readingUnit(text), Unit(ReadingUnit::celsius)) << text;
    EXPECT_EQ(readingUnit("kWh"), Unit(ReadingUnit::kilowattHour));
    EXPECT_EQ(readingUnit("Wh"), Unit(ReadingUnit::wattHour));
    EXPECT_EQ(readingUnit("W"), Unit(ReadingUnit::watt));
    EXPECT_EQ(readingUnit("kW"), Unit(ReadingUnit::kilowatt));
    EXPECT_EQ(readingUnit("SG"), Unit(ReadingUnit::specificGravity));
    EXPECT_EQ(readingUnit("°P"), Unit(ReadingUnit::degreePlato));
    EXPECT_EQ(unitNamed("K"), (LogUnit{ReadingUnit::celsius, true}));
    EXPECT_EQ(readingUnit(""), std::nullopt);
}

TEST(Header, isSplit)
{
    EXPECT_EQ(headerParts("Beer (°F)").bare, "Beer");
    EXPECT_EQ(headerParts("Beer [degC]").unit, Unit(ReadingUnit::celsius));
    EXPECT_EQ(headerParts("Beer (left)").bare, "Beer (left)");
    EXPECT_EQ(headerParts("Beer (left)").unit, std::nullopt);
    EXPECT_EQ(headerParts("beer_temp_f").unit, Unit(ReadingUnit::fahrenheit));
    EXPECT_EQ(headerParts("Beer, °C").unit, Unit(ReadingUnit::celsius));
    EXPECT_EQ(headerParts("kWh").unit, Unit(ReadingUnit::kilowattHour));
    EXPECT_EQ(headerParts("").unit, std::nullopt);
    EXPECT_EQ(headerParts(")").bare, ")");
}

TEST(Header, aLetterMayBeAName)
{
    EXPECT_EQ(chosen("Beer", {"Time", "Beer C"}, 1), ReadingUnit::celsius);
    EXPECT_EQ(chosen("Vessel C", {"Time", "Vessel C"}, 1), ReadingUnit::fahrenheit);
    EXPECT_EQ(chosen("Loop", {"Time", "Vessel A", "Vessel B", "Vessel C"}, 3),
              ReadingUnit::fahrenheit);
    EXPECT_EQ(chosen("Vessel C", {"Time", "Vessel C (C)"}, 1), ReadingUnit::celsius);
}

TEST(Header, missingUnitsFallBack)
{
    EXPECT_EQ(chosen("Plug", {"Time", "Plug"}, 1, SeriesKind::power), ReadingUnit::watt);
    EXPECT_EQ(chosen("Meter", {"Time", "Meter"}, 1, SeriesKind::meter), ReadingUnit::kilowattHour);
    EXPECT_EQ(chosen("Beer", {"Time", "Beer"}, 1), ReadingUnit::fahrenheit);
}

std::string zoneIn(std::string_view header)
{
    const HeaderZone said = headerZone({header});
    return !said.unclear.empty() ? "? " + said.unclear : said.zone ? said.zone->name() : "";
}

TEST(Header, namesUtc)
{
    for (const char* text : {"Time (UTC)", "UTC", "time_utc", "Logged GMT", "Time [utc]",
                             "Time (Z)", "Time (UTC+0)", "Time +00:00", "Time UTC - 5 min mean"})
        EXPECT_EQ(zoneIn(text), "UTC") << text;
    for (const char* text : {"Time", "Cutch", "Time (local)", "Date/Time", "Log 2026-03-07",
                             "Time-0700", "Est. time", "West cellar", "Ist", "met", "Time (C)"})
        EXPECT_EQ(zoneIn(text), "") << text;
}

TEST(Header, namesAnOffset)
{
    const std::pair<const char*, const char*> cases[] = {
        {"Date Time, GMT-05:00", "-05:00"},
        {"UTC+1", "+01:00"},
        {"GMT+01:00", "+01:00"},
        {"Time (UTC+05:30)", "+05:30"},
        {"Time (UTC-5)", "-05:00"},
        {"logged_utc+0530", "+05:30"},
        {"Time +01:00", "+01:00"},
        {"Time (-0700)", "-07:00"},
        {"Time (+2)", "+02:00"},
        {"Time (UTC\xE2\x88\x92"
         "03:00)",
         "-03:00"},
        {"Time EST (UTC-5)", "-05:00"},
        {"gmt -5", "-05:00"},
        {"Date/Time UTC+14", "+14:00"},
        {"Time [America/Denver]", "America/Denver"},
        {"Time (Etc/GMT+5)", "Etc/GMT+5"},
    };
    for (const auto& [text, zone] : cases)
        EXPECT_EQ(zoneIn(text), zone) << text;
    EXPECT_EQ(headerZone({"Date", "Time (UTC+1)"}).zone->name(), "+01:00");
}

TEST(Header, namesAnAmbiguousZone)
{
    const std::pair<const char*, const char*> cases[] = {
        {"Time (EST)", "EST"}, {"Time, CST", "CST"},      {"time_pst", "pst"},
        {"CET", "CET"},        {"Time [ist]", "ist"},     {"LOGGED IST", "IST"},
        {"Zeit (MEZ)", "MEZ"}, {"Time UTC+25", "UTC+25"}, {"Time UTC -5min", "UTC -5"},
    };
    for (const auto& [text, word] : cases)
        EXPECT_EQ(zoneIn(text), std::string("? ") + word) << text;
    EXPECT_EQ(headerZone({"Date (UTC+1)", "Time (UTC+2)"}).unclear, "UTC+01:00, UTC+02:00");
}

TEST(Header, columnsAreFound)
{
    const std::vector<std::string> header{"Time", "Beer (°F)", "Room", "room"};
    EXPECT_EQ(findColumn(header, "beer")->value(), 1u);
    EXPECT_EQ(findColumn(header, "Room")->value(), 2u);
    EXPECT_FALSE(findColumn(header, "ROOM").has_value());
    EXPECT_EQ(*findColumn(header, "Coolant"), std::nullopt);
    EXPECT_EQ(namedTimeColumns({"A+B", "A", "B"}, "A+B"), (TimeColumns{0, std::nullopt}));
    EXPECT_EQ(namedTimeColumns({"A", "B"}, " a + b "), (TimeColumns{0, 1}));
}

TEST(Values, missingWords)
{
    for (const char* text : {"", "-", "--", "---", "NA", "na", "N/A", "NaN", "nan", "null", "NULL",
                             "ERR", "err", "unavailable", "Unavailable"})
        EXPECT_TRUE(isMissing(text)) << text;
    for (const char* text : {"0", "none", "----", "inf", "nanny", "error 5"})
        EXPECT_FALSE(isMissing(text)) << text;
}

TEST(Values, limitsAreInside)
{
    // DS18B20: −55 … +125 °C (datasheet).
    EXPECT_EQ(impossible(ReadingUnit::celsius, -55.0), nullptr);
    EXPECT_EQ(impossible(ReadingUnit::celsius, 125.0), nullptr);
    EXPECT_NE(impossible(ReadingUnit::celsius, 125.1), nullptr);
    EXPECT_EQ(impossible(ReadingUnit::fahrenheit, 257.0), nullptr);
    EXPECT_NE(impossible(ReadingUnit::fahrenheit, -67.1), nullptr);
    EXPECT_NE(impossible(ReadingUnit::watt, -1.0), nullptr);
    EXPECT_EQ(impossible(ReadingUnit::kilowattHour, 0.0), nullptr);
    EXPECT_NE(impossible(ReadingUnit::specificGravity, 1050.0), nullptr);
}

TEST(Values, theDecimalSignOfAWholeLog)
{
    NumberCells comma;
    EXPECT_EQ(comma.take("1,234", SeriesKind::meter, 2)->value, 1.234);
    EXPECT_FALSE(comma.decimalSign().has_value());
    EXPECT_EQ(comma.take("12,5", SeriesKind::meter, 3)->value, 12.5);
    EXPECT_EQ(comma.decimalSign(), ',');
    EXPECT_EQ(comma.take("1.5", SeriesKind::meter, 4)->value, 1.5);
    EXPECT_FALSE(comma.decimalSign().has_value());
    NumberCells zero;
    EXPECT_EQ(zero.take("0,125", SeriesKind::meter, 2)->value, 0.125);
    EXPECT_EQ(zero.decimalSign(), ',');
    EXPECT_EQ(NumberCells{}.decimalSign(), '.');
}
