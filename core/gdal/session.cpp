// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/session.h"

#include <cpl_conv.h>
#include <cpl_error.h>
#include <cpl_http.h>
#include <gdal.h>
#include <mutex>
#include <ogr_srs_api.h>

namespace gdal {

void hear(Session& session, bool isFailure, const char* message) {
    session.failed_ = session.failed_ || isFailure;
    if (session.complaint_.empty()) {
        session.complaint_ = message;
    }
}

namespace {

void CPL_STDCALL heard(CPLErr level, CPLErrorNum /*number*/, const char* message) {
    auto* session = static_cast<Session*>(CPLGetErrorHandlerUserData());
    if (session != nullptr && level >= CE_Warning) {
        hear(*session, level >= CE_Failure, message);
    }
}

/// Stands in for GDAL's way to servers: a file that refers to one (a reference system by its
/// address, a schema) is read without it.
CPLHTTPResult* noNetwork(const char* address, CSLConstList /*options*/, GDALProgressFunc /*tell*/,
                         void* /*told*/, CPLHTTPFetchWriteFunc /*write*/, void* /*written*/,
                         void* /*ours*/) {
    auto* result = static_cast<CPLHTTPResult*>(CPLCalloc(1, sizeof(CPLHTTPResult)));
    result->nStatus = 1;
    result->pszErrBuf = CPLStrdup(CPLSPrintf("%s is not asked for", address));
    return result;
}

void setUpOnce() {
    static std::once_flag done;
    std::call_once(done, [] {
        GDALAllRegister();
        CPLHTTPSetFetchCallback(noNetwork, nullptr);
        OSRSetPROJEnableNetwork(FALSE);
        CPLSetConfigOption("GML_DOWNLOAD_SCHEMA", "NO");
        // Reading a file must neither write beside it nor look at its neighbours.
        CPLSetConfigOption("GDAL_PAM_ENABLED", "NO");
        CPLSetConfigOption("GDAL_DISABLE_READDIR_ON_OPEN", "TRUE");
        // GeoJSON objects of any size: a finely drawn shore is one object.
        CPLSetConfigOption("OGR_GEOJSON_MAX_OBJ_SIZE", "0");
    });
}

} // namespace

Session::Session() {
    setUpOnce();
    CPLPushErrorHandlerEx(heard, this);
}

Session::~Session() {
    CPLPopErrorHandler();
}

void Session::forget() {
    failed_ = false;
    complaint_.clear();
    CPLErrorReset();
}

base::Error Session::error(base::ErrorKind kind, std::string what, std::string where,
                           std::string whatToDo) const {
    if (!complaint_.empty()) {
        what += " (" + complaint_ + ")";
    }
    return {kind, std::move(what), std::move(where), std::move(whatToDo)};
}

} // namespace gdal
