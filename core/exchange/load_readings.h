// Loads the readings of meters, and those that were typed, from a description into a logbook: with
// the values before corrections, the sources, and the readings that no longer count.
#pragma once

#include "core/editing/register_check.h"
#include "core/exchange/description.h"

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace holdband::exchange {

class ReadingsLoader {
public:
    /// `name`: the description's file, for places. `pastEntries`: the entries of its history in the
    /// logbook, empty if the history is not loaded.
    ReadingsLoader(const store::LogbookFile& logbook, const store::Change& change,
                   const Description& description, std::string name,
                   std::vector<store::HistoryEntryId> pastEntries);

    /// Problem (data): a reading refers to a file or an entry that does not exist.
    Done check() const;
    /// Whether a register was imported with the file entry of that index.
    bool referTo(std::size_t file) const;
    /// Records the import that was made of the file entry of that index.
    void brought(std::size_t file, store::ImportId import);
    /// Adds the registers that came with the file, whose import is about to be withdrawn.
    Done addWithdrawn(std::size_t file);
    /// Adds all other registers; call it after all files are imported. Returns how many count.
    /// Problem (data): a reading that RegisterCheck refuses.
    Result<std::size_t> addRegisters();
    Done addHandReadings();

private:
    std::string at(const char* list, std::size_t index) const;
    Result<intake::RegisterCheck*> registerOf(const std::string& meter);
    Done addChecked(const DescribedReading& described);
    Done addUnchecked(const std::function<bool(const DescribedReading&)>& which);
    Done addWithHistory(const DescribedReading& described, const MeterReading& inForce);
    Done addHandReading(const DescribedHandReading& described);
    Result<std::optional<Milliseconds>> ownTimeDoubt();
    std::optional<store::ReadingSource> sourceOf(const DescribedReading& described) const;
    std::optional<store::HistoryEntryId> leftOutBy(const DescribedReading& described) const;
    bool isWithdrawn(const DescribedReading& described) const;
    std::vector<std::size_t> inOrderOfTime() const;

    const store::LogbookFile& m_logbook;
    const store::Change& m_change;
    const Description& m_description;
    std::string m_name;
    std::vector<store::HistoryEntryId> m_pastEntries;
    std::map<std::size_t, store::ImportId> m_imports; ///< by index of the file entry
    std::map<std::string, intake::RegisterCheck> m_registers;
    std::optional<Milliseconds> m_usualDoubt; ///< the logbook's, once it was needed
};

} // namespace holdband::exchange
