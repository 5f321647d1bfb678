using System.Net;

namespace Duskwright.Serve;

/// <summary>A page of a few words, for when the program itself is not handed out: nothing is loaded and no script runs.</summary>
internal static class PlainPage
{
    /// <summary>Writes the page.</summary>
    /// <param name="heading">Its heading, as text.</param>
    /// <param name="body">What stands beneath, as HTML.</param>
    /// <param name="head">More for its head, as HTML.</param>
    /// <returns>The whole page.</returns>
    internal static string Of(string heading, string body, string head = "") =>
        $$"""
        <!doctype html><html lang="en-GB"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><meta name="color-scheme" content="light dark"><title>{{WebUtility.HtmlEncode(heading)}} · Duskwright</title>{{head}}
        <style>
        :root{--ground:#FAF6EE;--sheet:#FFF;--ink:#23243A;--soft:#5C5D73;--button:#23243A;--button-ink:#FFF;--ring:#8A5200}
        @media (prefers-color-scheme:dark){:root{--ground:#12142B;--sheet:#1D2145;--ink:#F1EDE4;--soft:#B9B7CC;--button:#FFB547;--button-ink:#23243A;--ring:#FFC873} }
        *{box-sizing:border-box}body{font:1.125rem/1.5 system-ui,sans-serif;margin:0;background:var(--ground);color:var(--ink)}main{max-width:34rem;margin:0 auto;padding:2.5rem 1.25rem}
        h1{font:600 1.9rem/1.15 Georgia,serif;margin:0 0 .6em}a{color:inherit}.soft{color:var(--soft)}form{margin:1rem 0}label{display:block}
        input,button{font:inherit;min-height:48px;padding:.6rem 1rem;width:100%;margin-top:.75rem;border-radius:10px}input{background:var(--sheet);color:var(--ink);border:1.5px solid var(--soft);font-size:1.5rem;letter-spacing:.12em}
        button{border:0;border-radius:24px;background:var(--button);color:var(--button-ink);font-weight:600;cursor:pointer}button.second{background:var(--sheet);color:var(--ink);border:1.5px solid var(--ink)}:focus-visible{outline:3px solid var(--ring);outline-offset:2px}
        </style></head>
        <body><main><h1>{{WebUtility.HtmlEncode(heading)}}</h1>{{body}}</main></body></html>
        """;
}
