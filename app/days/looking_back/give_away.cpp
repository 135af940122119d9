// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/give_away.h"

#include "app/days/where_to_save.h"
#include "app/wording/tongue.h"
#include "core/base/whole_file.h"

#include <QClipboard>
#include <QGuiApplication>

namespace days::looking_back {

void copyToClipboard(const QImage& picture) {
    QGuiApplication::clipboard()->setImage(picture);
}

void copyToClipboard(const QString& text) {
    QGuiApplication::clipboard()->setText(text);
}

void saveTableOf(QWidget& parent, open_water::OpenWater& open, const QString& name,
                 const QString& text) {
    const QString path = askWhereToSave(parent, open, wording::Tongue::tr("Save the table"), name,
                                        wording::Tongue::tr("Tables (*.csv)"));
    if (path.isEmpty()) {
        return;
    }
    if (const auto written = base::writeWholeFile(path.toStdString(), text.toStdString());
        !written) {
        emit open.failed(written.error());
    } else {
        emit open.happened(wording::Tongue::tr("The table is in %1.").arg(path));
    }
}

} // namespace days::looking_back
