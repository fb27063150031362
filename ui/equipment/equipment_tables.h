// The equipment as tables of text: parts and their sum, meters, sensors.
#pragma once

#include "core/model/batch.h"
#include "core/model/equipment.h"
#include "core/text/zone.h"
#include "ui/tables/table_model.h"

namespace holdband::ui {

struct Equipment {
    LogbookSettings settings;
    Zone zone;
    std::vector<Setup> setups;
    std::vector<Sensor> sensors;
    std::vector<Meter> meters;
    std::vector<NamedPlan> plans;
};

/// "coolant loop · 2 vessels · rated 260 W"
QString setupWords(const Setup& setup);
TableText partsTable(const Setup& setup, const LogbookSettings& settings);
/// "3 parts · $132.60"; empty without parts.
QString partsSum(const Setup& setup, const LogbookSettings& settings);
QString ratingsText(const Setup& setup);
TableText metersTable(const Equipment& equipment);
TableText sensorsTable(const Equipment& equipment);
TableText plansTable(const Equipment& equipment);
/// One row for each price: its start date, the price of a kWh, and its windows.
TableText pricesTable(const Equipment& equipment);
/// " · retired 3 Mar 2026", or empty.
QString retiredText(const std::optional<Instant>& retired, const Zone& zone);
/// What there is to say where no price is on record; else nothing.
TableText roundsTable(const Equipment& equipment);
QString priceWords(const LogbookSettings& settings);

} // namespace holdband::ui
