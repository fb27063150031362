// Setups with their parts, meters and sensors; read-only. The cautions for each kind of setup stand
// here too.
#pragma once

#include <QWidget>

class QVBoxLayout;

namespace holdband {
struct Setup;
}

namespace holdband::ui {

class Session;
struct Equipment;

class EquipmentPage : public QWidget {
    Q_OBJECT
public:
    explicit EquipmentPage(Session& session, QWidget* parent = nullptr);

    void refresh();
    void clear();
    const QString& subtitle() const { return m_subtitle; }

Q_SIGNALS:
    void equipmentShown();
    void failed(const QString& sentence);

private:
    void fill(const Equipment& equipment);
    void addSetup(const Setup& setup, const Equipment& equipment, QVBoxLayout* column);

    Session* m_session;
    QVBoxLayout* m_left;
    QVBoxLayout* m_right;
    QString m_subtitle;
};

} // namespace holdband::ui
