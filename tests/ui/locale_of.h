// Another locale for the length of a test.
#pragma once

#include <QLocale>

namespace holdband::ui::test {

class LocaleOf {
public:
    explicit LocaleOf(const char* name) { QLocale::setDefault(QLocale(QString::fromLatin1(name))); }
    ~LocaleOf() { QLocale::setDefault(m_before); }
    LocaleOf(const LocaleOf&) = delete;
    LocaleOf& operator=(const LocaleOf&) = delete;

private:
    QLocale m_before;
};

} // namespace holdband::ui::test
