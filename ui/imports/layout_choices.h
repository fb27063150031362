// What parts a log's columns, and which line has their names: as found, with the reason, or as a
// person says.
#pragma once

#include "core/intake/csv/preview.h"

#include <QWidget>

class QComboBox;

namespace holdband::ui {

class LayoutChoices : public QWidget {
    Q_OBJECT
public:
    explicit LayoutChoices(QWidget* parent = nullptr);

    /// `wish`: what was chosen, also where the log can't be laid out so.
    void showLayout(const intake::LogPreview& preview, const LayoutWish& wish);
    LayoutWish wish() const;
    QComboBox* delimiter() const { return m_delimiter; }
    QComboBox* header() const { return m_header; }

Q_SIGNALS:
    void changed();

private:
    void fillDelimiters(const intake::LogPreview& preview, const LayoutWish& wish);
    void fillHeaders(const intake::LogPreview& preview, const LayoutWish& wish);

    QComboBox* m_delimiter;
    QComboBox* m_header;
};

} // namespace holdband::ui
