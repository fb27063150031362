// The power of both setups in the same weather, and the hold for which it is computed.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "ui/charts/pair_sides.h"
#include "ui/forms/unit_format.h"
#include "ui/theme/card.h"

class QLabel;

namespace holdband::ui {

class PictureView;
class QuantityField;

class WeatherCard : public Card {
    Q_OBJECT
public:
    explicit WeatherCard(QWidget* parent = nullptr);

    /// Null: nothing is compared.
    void setComparison(const results::SideBySide* comparison, const UnitFormat& format,
                       const PairSides& sides);
    QuantityField* lift() const { return m_lift; }
    QuantityField* hours() const { return m_hours; }
    PictureView* picture() const { return m_picture; }
    QString sentence() const;

Q_SIGNALS:
    /// The user wants this hold instead of the previous one.
    void weighingWanted(const Weighing& weighing);

private:
    QWidget* asked(const QString& words, QuantityField* field);
    void takeFields();

    QLabel* m_sentence;
    PictureView* m_picture;
    QuantityField* m_lift;
    QuantityField* m_hours;
    Weighing m_weighing;
};

} // namespace holdband::ui
