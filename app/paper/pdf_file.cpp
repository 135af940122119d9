// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/pdf_file.h"

#include "core/base/whole_file.h"

#include <QBuffer>
#include <QPdfWriter>

namespace paper {

namespace {

constexpr int dotsPerInch = 1200;

} // namespace

base::Result<int> savePdf(const std::filesystem::path& path, const std::string& title,
                          const std::function<base::Result<int>(QPagedPaintDevice&)>& paint) {
    QBuffer bytes;
    bytes.open(QIODevice::WriteOnly);
    base::Result<int> pages = 0;
    {
        QPdfWriter writer(&bytes);
        writer.setResolution(dotsPerInch);
        writer.setTitle(QString::fromStdString(title));
        writer.setCreator(QStringLiteral("Meremark"));
        pages = paint(writer);
    }
    if (!pages) {
        return pages;
    }
    const QByteArray& whole = bytes.data();
    const auto written = base::writeWholeFile(
        path, std::string_view(whole.constData(), static_cast<std::size_t>(whole.size())));
    if (!written) {
        return std::unexpected(written.error());
    }
    return pages;
}

} // namespace paper
