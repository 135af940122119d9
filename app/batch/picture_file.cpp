// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/picture_file.h"

#include "app/paper/day_sheet.h"
#include "app/paper/picture.h"
#include "app/paper/rates_picture.h"
#include "app/paper/small_picture.h"
#include "core/base/whole_file.h"

#include <QBuffer>
#include <QGuiApplication>
#include <QImage>
#include <QPageSize>

#include <cstdio>

namespace batch {

using base::Result;

namespace {

constexpr QSize pictureSize(1600, 1200);

/// Scripts read standard error: Qt's own remarks about the machine do not belong there.
void sayNothing(QtMsgType type, const QMessageLogContext& /*context*/, const QString& message) {
    if (type == QtFatalMsg) {
        std::fputs((message + '\n').toLocal8Bit().constData(), stderr);
    }
}

/// Fonts and images need Qt's application; drawn without a display, and only set up where something
/// is drawn at all and nobody else has set it up.
void setQtUp() {
    if (QCoreApplication::instance() != nullptr) {
        return;
    }
    static int argc = 1;
    static char name[] = "meremark-batch";
    static char* argv[] = {name, nullptr};
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    qInstallMessageHandler(sayNothing);
    static const QGuiApplication qt(argc, argv);
}

Result<void> writePng(const std::filesystem::path& path, const QImage& image) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return base::writeWholeFile(
        path, std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

chart::ChartContent contentOf(const water::Water& water, const water::Derived& derived,
                              std::shared_ptr<const water::PlannedDay> planned) {
    setQtUp();
    chart::ChartContent content;
    content.water = std::make_shared<const water::Water>(water);
    content.derived = derived;
    content.planned = std::move(planned);
    return content;
}

QPageSize paperOf(const std::string& name) {
    if (name == "letter") {
        return QPageSize(QPageSize::Letter);
    }
    return QPageSize(name == "a5" ? QPageSize::A5 : QPageSize::A4);
}

} // namespace

Result<void> writePicture(const std::filesystem::path& path, const water::Water& water,
                          const water::Derived& derived,
                          std::shared_ptr<const water::PlannedDay> planned) {
    return writePng(
        path, paper::renderPicture(contentOf(water, derived, std::move(planned)), pictureSize));
}

Result<void> writeSmallPicture(const std::filesystem::path& path,
                               const std::shared_ptr<const water::Water>& water,
                               const water::Derived& kept, int side) {
    setQtUp();
    return writePng(path, paper::renderSmallPicture(water, kept, {side, side}, chart::Inks::light));
}

Result<void> writeRatesPicture(const std::filesystem::path& path, const rates::RateTable& table,
                               const std::string& title) {
    setQtUp();
    return writePng(path, paper::renderRates(table, QString::fromStdString(title), pictureSize));
}

Result<void> writeSheet(const std::filesystem::path& path, const water::Water& water,
                        const water::Derived& derived,
                        std::shared_ptr<const water::PlannedDay> planned, const SheetWish& wish) {
    const auto pages = paper::saveDaySheet(path, contentOf(water, derived, std::move(planned)),
                                           wish.hasPictures ? paper::SheetForm::withPictures
                                                            : paper::SheetForm::oneSheet,
                                           paperOf(wish.paper));
    if (!pages) {
        return std::unexpected(pages.error());
    }
    return {};
}

} // namespace batch
