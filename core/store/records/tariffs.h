// The price of energy in the store: the first tariff, and its changes. Not for use outside
// core/store.
#pragma once

#include "core/model/equipment.h"
#include "core/store/logbook_file.h"

namespace holdband::store {

Result<std::vector<TariffWindow>> readFirstWindows(const Database& database);
Done writeFirstWindows(const Database& database, const std::vector<TariffWindow>& windows);

Result<std::vector<TariffChange>> readTariffChanges(const Database& database);
Done writeTariffChanges(const Database& database, const std::vector<TariffChange>& changes);

} // namespace holdband::store
