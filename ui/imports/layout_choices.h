// Chooses the delimiter of a log and its header line: as detected, with the reason, or as the user
// sets them.
#pragma once

#include "core/intake/csv/preview.h"

#include <QWidget>

class QComboBox;

namespace holdband::ui {

class LayoutChoices : public QWidget {
    Q_OBJECT
public:
    explicit LayoutChoices(QWidget* parent = nullptr);

    /// `layoutRequest`: the user's choice, shown even if the log can't be read that way.
    void showLayout(const intake::LogPreview& preview, const LayoutRequest& layoutRequest);
    LayoutRequest layoutRequest() const;
    QComboBox* delimiter() const { return m_delimiter; }
    QComboBox* header() const { return m_header; }

Q_SIGNALS:
    void changed();

private:
    void fillDelimiters(const intake::LogPreview& preview, const LayoutRequest& layoutRequest);
    void fillHeaders(const intake::LogPreview& preview, const LayoutRequest& layoutRequest);

    QComboBox* m_delimiter;
    QComboBox* m_header;
};

} // namespace holdband::ui
