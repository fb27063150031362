// The data of the logbook for dialogs about batches, read at once on a worker.
#pragma once

#include "core/model/batch.h"
#include "core/model/equipment.h"
#include "core/store/logbook_file.h"
#include "ui/forms/unit_format.h"

#include <QStringList>
#include <vector>

namespace holdband::ui {

struct BatchFormData {
    LogbookSettings settings;
    UnitFormat format;
    std::vector<Setup> setups;
    std::vector<Sensor> sensors;
    std::vector<Batch> batches; ///< in order of pitching
    std::vector<NamedPlan> plans;

    const Batch* batch(const std::string& name) const;
    const Batch* lastBatch() const { return batches.empty() ? nullptr : &batches.back(); }
};

Result<BatchFormData> readFormData(const store::LogbookFile& file);

/// The last batch's name with its number one higher, else "Batch 1"; never a name that is taken.
std::string suggestedName(const BatchFormData& formData);

/// Setups not retired, the last batch's first; `current`, the batch's own, is offered even if
/// it is retired.
std::vector<std::string> offeredSetups(const BatchFormData& formData,
                                       const std::string& current = {});
/// Sensors of that kind not retired: the last batch's first, then those of `setup`, then the rest.
std::vector<std::string> offeredSensors(const BatchFormData& formData, SensorKind reads,
                                        const std::string& setup, const std::string& current = {});

/// Questions to ask before `batch` replaces `oldName` (empty: a new one): a vessel or a sensor that
/// two batches share, more batches than vessels, a pitching in the future, unusual targets.
QStringList batchQuestions(const Batch& batch, const std::string& oldName,
                           const BatchFormData& formData, Instant now);

} // namespace holdband::ui
