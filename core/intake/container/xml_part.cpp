#include "core/intake/container/xml_part.h"

#include "core/text/phrase.h"

#include <array>

namespace holdband {

UnpackedDevice::UnpackedDevice(std::unique_ptr<Unpacker> unpacker) : m_unpacker(std::move(unpacker))
{
    QIODevice::open(QIODevice::ReadOnly | QIODevice::Unbuffered);
}

qint64 UnpackedDevice::readData(char* to, qint64 most)
{
    if (m_problem)
        return -1;
    const auto filled = m_unpacker->read(to, static_cast<std::size_t>(most));
    if (filled)
        return static_cast<qint64>(*filled);
    m_problem = filled.error();
    return -1;
}

qint64 UnpackedDevice::writeData(const char*, qint64)
{
    return -1;
}

XmlPart::XmlPart(std::unique_ptr<Unpacker> unpacker, ZipEntry entry)
    : m_entry(std::move(entry)), m_device(std::move(unpacker)), m_xml(&m_device)
{
}

Result<std::unique_ptr<XmlPart>> XmlPart::open(std::string_view archive, const ZipEntry& entry)
{
    auto unpacker = unpackEntry(archive, entry);
    HOLDBAND_TRY(unpacker);
    return std::unique_ptr<XmlPart>(new XmlPart(std::move(*unpacker), entry));
}

bool XmlPart::next()
{
    while (!m_xml.atEnd()) {
        m_xml.readNext();
        m_hasDtd = m_hasDtd || m_xml.isDTD(); // its entities could unfold without end
        if (m_hasDtd)
            return false;
        if (m_xml.isStartElement() || m_xml.isEndElement())
            return true;
    }
    return false;
}

std::string XmlPart::attribute(QLatin1String name) const
{
    return m_xml.attributes().value(name).toString().toStdString();
}

Done XmlPart::finish()
{
    std::array<char, 16 << 10> rest{};
    while (!m_xml.hasError() && m_device.read(rest.data(), rest.size()) > 0) {
    }
    if (m_device.problem())
        return inEntry(*m_device.problem(), m_entry);
    if (!m_xml.hasError() && !m_hasDtd)
        return {};
    return inEntry({ProblemKind::data,
                    Phrase::tr("the workbook is damaged: this part is no sound XML"),
                    Phrase::tr("line %1").with(std::to_string(m_xml.lineNumber())),
                    Phrase::tr("save it again, or export the sheet as CSV")},
                   m_entry);
}

} // namespace holdband
