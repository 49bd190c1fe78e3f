package wetside.browser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A page of the bench in one of its states.
 *
 * @param name  of its pictures
 * @param ready what is there when it has nothing more to wait for
 */
record Address(String name, String path, String ready) {
    /** Under a declared address: what to look at there. Empty for what is no page: pieces of pages, files, streams. */
    static Map<String, List<Address>> all(Rig rig) {
        Map<String, List<Address>> all = new LinkedHashMap<>();
        for (String none : List.of(
                "/",
                "/intake",
                "/department/jobs.yaml",
                "/assets/{version}/{file}",
                "/jobs/{number}/fault/expect",
                "/jobs/{number}/fault/sharp",
                "/jobs/{number}/photos/{photo}",
                "/jobs/{number}/report.pdf",
                "/fault/expect",
                "/fault/sharp",
                "/runs/{run}/pictures",
                "/runs/{run}/scenario.yaml")) {
            all.put(none, List.of());
        }
        jobs(rig, all);
        for (String menu : List.of("machines", "readings", "run", "department")) {
            all.put("/" + menu, List.of(page(menu, "/" + menu)));
        }
        machine(all, "/machines/{id}", "machine", "/machines/" + rig.machine);
        machine(all, "/machines/file/{name}", "file", "/machines/file/spring-lever");
        // a water without a machine is posted, never kept
        all.put("/water/advice.html", List.of());
        all.put("/water/advice.pdf", List.of());
        all.put("/water", List.of(page("water-empty", "/water"), page("water", "/water?example=1")));
        return all;
    }

    private static void jobs(Rig rig, Map<String, List<Address>> all) {
        String job = "/jobs/" + rig.job;
        all.put(
                "/jobs",
                List.of(page("jobs", "/jobs"), page("jobs-intake", "/jobs?who=Tidehouse&complaint=no+steam+at+all")));
        all.put("/done", List.of(page("done", "/done")));
        all.put("/search", List.of(page("search", "/search?q=lever"), page("search-none", "/search?q=zzzz")));
        all.put("/jobs/{number}", List.of(page("job", job), page("job-done", "/jobs/" + rig.done)));
        all.put(
                "/jobs/{number}/fault",
                List.of(
                        new Address("fault", job + "/fault", "document.querySelector('#sharpness[data-ready=yes]')"),
                        new Address(
                                "fault-why",
                                job + "/fault?why=works+as+it+should",
                                "document.querySelector('.reasons')"),
                        new Address("fault-rest", job + "/fault?others=yes", "document.querySelector('.unlikely')")));
        all.put(
                "/fault",
                List.of(
                        page("fault-choice", "/fault"),
                        page("fault-free", "/fault?machine=spring-lever&known=cup+of+one+pull~44+g"),
                        page("refused", "/fault?machine=none")));
    }

    private static void machine(Map<String, List<Address>> all, String declared, String name, String path) {
        List<Address> pages = new ArrayList<>(List.of(page(name, path)));
        if (name.equals("machine")) {
            pages.add(page("machine-wires", path + "?map=wires"));
            pages.add(page("machine-pressure", path + "?by=pressure"));
            pages.add(page("part-card", path + "?part=safety-valve"));
            pages.add(page("tour", path + "?follow=water&stop=3"));
        }
        all.put(declared, pages);
        all.put(
                declared + "/readings",
                List.of(new Address(name + "-readings", path + "/readings", "!document.getElementById('going')")));
        all.put(
                declared + "/run",
                List.of(new Address(
                        name + "-run", path + "/run", "document.getElementById('clock').textContent > '0:00'")));
        all.put(
                declared + "/water",
                List.of(new Address(name + "-water", path + "/water", "!document.getElementById('waiting')")));
        // only what is on the register keeps a water
        all.put(
                declared + "/water/advice.html",
                name.equals("file") ? List.of() : List.of(page("water-advice", path + "/water/advice.html")));
        all.put(declared + "/water/advice.pdf", List.of());
        all.put(declared + "/readings/progress", List.of());
    }

    private static Address page(String name, String path) {
        return new Address(name, path, "true");
    }
}
