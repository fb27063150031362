// The details of a batch as fields in two columns.
#pragma once

#include "ui/plans/batch_form_data.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLineEdit;

namespace holdband::ui {

class InstantField;
class QuantityField;

class BatchFields : public QWidget {
    Q_OBJECT
public:
    /// A new batch has no end, no final gravity, and no gap settings of its own yet.
    enum class For { newBatch, anyBatch };

    explicit BatchFields(For what, QWidget* parent = nullptr);

    void setFormData(const BatchFormData& formData, std::function<Instant()> now);
    void setBatch(const Batch& batch);

    /// Returns `into` with the contents of the fields. On a Problem the field gets the focus.
    Result<Batch> read(Batch into);

    QLineEdit* name() const { return m_name; }
    QComboBox* setup() const { return m_setup; }
    QLineEdit* vessel() const { return m_vessel; }
    QComboBox* beerSensor() const { return m_beer; }
    QComboBox* ambientSensor() const { return m_ambient; }
    InstantField* pitched() const { return m_pitched; }
    InstantField* ended() const { return m_ended; }
    QuantityField* volume() const { return m_volume; }
    QuantityField* originalGravity() const { return m_original; }
    QuantityField* finalGravity() const { return m_final; }
    /// How long the beer must stay inside to be settled, and back inside to end an excursion.
    QuantityField* dwell() const { return m_dwell; }
    QuantityField* returnTime() const { return m_return; }

private:
    void layOut(For what);
    void fillSensors();
    Result<Batch> readTimes(Batch into);
    Result<Batch> readQuantities(Batch into);

    BatchFormData m_formData;
    Batch m_batch;
    QLineEdit* m_name;
    QComboBox* m_setup;
    QLineEdit* m_vessel;
    QComboBox* m_beer;
    QComboBox* m_ambient;
    InstantField* m_pitched;
    InstantField* m_ended;
    QuantityField* m_volume;
    QuantityField* m_original;
    QuantityField* m_final;
    QuantityField* m_gap;
    QuantityField* m_ignoreShorterThan;
    QuantityField* m_dwell;
    QuantityField* m_return;
};

} // namespace holdband::ui
