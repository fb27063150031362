// An XML file in a zip archive, read while it is unpacked.
#pragma once

#include "core/intake/container/zip_archive.h"
#include "core/problem.h"

#include <QIODevice>
#include <QXmlStreamReader>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace holdband {

/// What an Unpacker gives, as a device for Qt.
class UnpackedDevice : public QIODevice {
public:
    explicit UnpackedDevice(std::unique_ptr<Unpacker> unpacker);
    bool isSequential() const override { return true; }
    const std::optional<Problem>& problem() const { return m_problem; }

protected:
    qint64 readData(char* to, qint64 most) override;
    qint64 writeData(const char* bytes, qint64 count) override;

private:
    std::unique_ptr<Unpacker> m_unpacker;
    std::optional<Problem> m_problem;
};

class XmlPart {
public:
    /// `archive` must stay where it is. Problem (data) as unpackEntry.
    static Result<std::unique_ptr<XmlPart>> open(std::string_view archive, const ZipEntry& entry);

    QXmlStreamReader& xml() { return m_xml; }
    /// The next start or end of an element; false at the end, or after an error.
    bool next();
    bool isStart(QLatin1String name) const
    {
        return m_xml.isStartElement() && m_xml.name() == name;
    }
    bool isEnd(QLatin1String name) const { return m_xml.isEndElement() && m_xml.name() == name; }
    /// Of the element that starts here; empty where it has none.
    std::string attribute(QLatin1String name) const;

    /// Reads what is left, so that all of it is checked. Problem (data, place "NAME, byte N" or
    /// "NAME, line N"): damaged, or no XML.
    Done finish();

private:
    XmlPart(std::unique_ptr<Unpacker> unpacker, ZipEntry entry);

    ZipEntry m_entry;
    UnpackedDevice m_device;
    QXmlStreamReader m_xml;
    bool m_hasDtd = false;
};

} // namespace holdband
