package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import wetside.page.PdfSheet;
import wetside.shop.Job;

/** A job's report as PDF: for the owner, or with {@code ?for=file} for the file. */
final class ReportPages implements Routes {
    private final Workshop workshop;

    ReportPages(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/jobs/{number}/report.pdf", this::report);
    }

    private void report(Context context) {
        Job job = Numbers.job(workshop, context);
        Dossier dossier = new Dossier(workshop, job, Frame.units(context));
        boolean file = "file".equals(context.queryParam("for"));
        byte[] pdf = PdfSheet.of(file ? new FileReport(dossier).sheet() : new OwnerReport(dossier).sheet());
        context.header(
                "Content-Disposition", "inline; filename=\"job-" + job.number() + (file ? "-file" : "") + ".pdf\"");
        context.contentType("application/pdf").result(pdf);
    }
}
