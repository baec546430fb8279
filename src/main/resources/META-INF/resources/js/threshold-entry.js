var N=globalThis,O=N.ShadowRoot&&(N.ShadyCSS===void 0||N.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,q=Symbol(),le=new WeakMap,k=class{constructor(e,t,s){if(this._$cssResult$=!0,s!==q)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=t}get styleSheet(){let e=this.o,t=this.t;if(O&&e===void 0){let s=t!==void 0&&t.length===1;s&&(e=le.get(t)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),s&&le.set(t,e))}return e}toString(){return this.cssText}},he=i=>new k(typeof i=="string"?i:i+"",void 0,q),F=(i,...e)=>{let t=i.length===1?i[0]:e.reduce((s,n,r)=>s+(o=>{if(o._$cssResult$===!0)return o.cssText;if(typeof o=="number")return o;throw Error("Value passed to 'css' function must be a 'css' function result: "+o+". Use 'unsafeCSS' to pass non-literal values, but take care to ensure page security.")})(n)+i[r+1],i[0]);return new k(t,i,q)},ue=(i,e)=>{if(O)i.adoptedStyleSheets=e.map(t=>t instanceof CSSStyleSheet?t:t.styleSheet);else for(let t of e){let s=document.createElement("style"),n=N.litNonce;n!==void 0&&s.setAttribute("nonce",n),s.textContent=t.cssText,i.appendChild(s)}},G=O?i=>i:i=>i instanceof CSSStyleSheet?(e=>{let t="";for(let s of e.cssRules)t+=s.cssText;return he(t)})(i):i;var{is:Me,defineProperty:Ue,getOwnPropertyDescriptor:De,getOwnPropertyNames:Be,getOwnPropertySymbols:ze,getPrototypeOf:Ie}=Object,M=globalThis,ce=M.trustedTypes,Ke=ce?ce.emptyScript:"",je=M.reactiveElementPolyfillSupport,x=(i,e)=>i,J={toAttribute(i,e){switch(e){case Boolean:i=i?Ke:null;break;case Object:case Array:i=i==null?i:JSON.stringify(i)}return i},fromAttribute(i,e){let t=i;switch(e){case Boolean:t=i!==null;break;case Number:t=i===null?null:Number(i);break;case Object:case Array:try{t=JSON.parse(i)}catch{t=null}}return t}},fe=(i,e)=>!Me(i,e),pe={attribute:!0,type:String,converter:J,reflect:!1,useDefault:!1,hasChanged:fe};Symbol.metadata??=Symbol("metadata"),M.litPropertyMetadata??=new WeakMap;var f=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,t=pe){if(t.state&&(t.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((t=Object.create(t)).wrapped=!0),this.elementProperties.set(e,t),!t.noAccessor){let s=Symbol(),n=this.getPropertyDescriptor(e,s,t);n!==void 0&&Ue(this.prototype,e,n)}}static getPropertyDescriptor(e,t,s){let{get:n,set:r}=De(this.prototype,e)??{get(){return this[t]},set(o){this[t]=o}};return{get:n,set(o){let l=n?.call(this);r?.call(this,o),this.requestUpdate(e,l,s)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??pe}static _$Ei(){if(this.hasOwnProperty(x("elementProperties")))return;let e=Ie(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(x("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(x("properties"))){let t=this.properties,s=[...Be(t),...ze(t)];for(let n of s)this.createProperty(n,t[n])}let e=this[Symbol.metadata];if(e!==null){let t=litPropertyMetadata.get(e);if(t!==void 0)for(let[s,n]of t)this.elementProperties.set(s,n)}this._$Eh=new Map;for(let[t,s]of this.elementProperties){let n=this._$Eu(t,s);n!==void 0&&this._$Eh.set(n,t)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let t=[];if(Array.isArray(e)){let s=new Set(e.flat(1/0).reverse());for(let n of s)t.unshift(G(n))}else e!==void 0&&t.push(G(e));return t}static _$Eu(e,t){let s=t.attribute;return s===!1?void 0:typeof s=="string"?s:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,t=this.constructor.elementProperties;for(let s of t.keys())this.hasOwnProperty(s)&&(e.set(s,this[s]),delete this[s]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return ue(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,t,s){this._$AK(e,s)}_$ET(e,t){let s=this.constructor.elementProperties.get(e),n=this.constructor._$Eu(e,s);if(n!==void 0&&s.reflect===!0){let r=(s.converter?.toAttribute!==void 0?s.converter:J).toAttribute(t,s.type);this._$Em=e,r==null?this.removeAttribute(n):this.setAttribute(n,r),this._$Em=null}}_$AK(e,t){let s=this.constructor,n=s._$Eh.get(e);if(n!==void 0&&this._$Em!==n){let r=s.getPropertyOptions(n),o=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:J;this._$Em=n;let l=o.fromAttribute(t,r.type);this[n]=l??this._$Ej?.get(n)??l,this._$Em=null}}requestUpdate(e,t,s,n=!1,r){if(e!==void 0){let o=this.constructor;if(n===!1&&(r=this[e]),s??=o.getPropertyOptions(e),!((s.hasChanged??fe)(r,t)||s.useDefault&&s.reflect&&r===this._$Ej?.get(e)&&!this.hasAttribute(o._$Eu(e,s))))return;this.C(e,t,s)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,t,{useDefault:s,reflect:n,wrapped:r},o){s&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,o??t??this[e]),r!==!0||o!==void 0)||(this._$AL.has(e)||(this.hasUpdated||s||(t=void 0),this._$AL.set(e,t)),n===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(t){Promise.reject(t)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[n,r]of this._$Ep)this[n]=r;this._$Ep=void 0}let s=this.constructor.elementProperties;if(s.size>0)for(let[n,r]of s){let{wrapped:o}=r,l=this[n];o!==!0||this._$AL.has(n)||l===void 0||this.C(n,void 0,r,l)}}let e=!1,t=this._$AL;try{e=this.shouldUpdate(t),e?(this.willUpdate(t),this._$EO?.forEach(s=>s.hostUpdate?.()),this.update(t)):this._$EM()}catch(s){throw e=!1,this._$EM(),s}e&&this._$AE(t)}willUpdate(e){}_$AE(e){this._$EO?.forEach(t=>t.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(t=>this._$ET(t,this[t])),this._$EM()}updated(e){}firstUpdated(e){}};f.elementStyles=[],f.shadowRootOptions={mode:"open"},f[x("elementProperties")]=new Map,f[x("finalized")]=new Map,je?.({ReactiveElement:f}),(M.reactiveElementVersions??=[]).push("2.1.2");var se=globalThis,me=i=>i,U=se.trustedTypes,ge=U?U.createPolicy("lit-html",{createHTML:i=>i}):void 0,Ae="$lit$",g=`lit$${Math.random().toFixed(9).slice(2)}$`,Ee="?"+g,We=`<${Ee}>`,b=document,P=()=>b.createComment(""),T=i=>i===null||typeof i!="object"&&typeof i!="function",ie=Array.isArray,Ve=i=>ie(i)||typeof i?.[Symbol.iterator]=="function",X=`[ 	
\f\r]`,C=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,$e=/-->/g,ve=/>/g,v=RegExp(`>|${X}(?:([^\\s"'>=/]+)(${X}*=${X}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),ye=/'/g,be=/"/g,Se=/^(?:script|style|textarea|title)$/i,ne=i=>(e,...t)=>({_$litType$:i,strings:e,values:t}),w=ne(1),tt=ne(2),st=ne(3),_=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),_e=new WeakMap,y=b.createTreeWalker(b,129);function we(i,e){if(!ie(i)||!i.hasOwnProperty("raw"))throw Error("invalid template strings array");return ge!==void 0?ge.createHTML(e):e}var qe=(i,e)=>{let t=i.length-1,s=[],n,r=e===2?"<svg>":e===3?"<math>":"",o=C;for(let l=0;l<t;l++){let a=i[l],h,c,d=-1,p=0;for(;p<a.length&&(o.lastIndex=p,c=o.exec(a),c!==null);)p=o.lastIndex,o===C?c[1]==="!--"?o=$e:c[1]!==void 0?o=ve:c[2]!==void 0?(Se.test(c[2])&&(n=RegExp("</"+c[2],"g")),o=v):c[3]!==void 0&&(o=v):o===v?c[0]===">"?(o=n??C,d=-1):c[1]===void 0?d=-2:(d=o.lastIndex-c[2].length,h=c[1],o=c[3]===void 0?v:c[3]==='"'?be:ye):o===be||o===ye?o=v:o===$e||o===ve?o=C:(o=v,n=void 0);let m=o===v&&i[l+1].startsWith("/>")?" ":"";r+=o===C?a+We:d>=0?(s.push(h),a.slice(0,d)+Ae+a.slice(d)+g+m):a+g+(d===-2?l:m)}return[we(i,r+(i[t]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),s]},L=class i{constructor({strings:e,_$litType$:t},s){let n;this.parts=[];let r=0,o=0,l=e.length-1,a=this.parts,[h,c]=qe(e,t);if(this.el=i.createElement(h,s),y.currentNode=this.el.content,t===2||t===3){let d=this.el.content.firstChild;d.replaceWith(...d.childNodes)}for(;(n=y.nextNode())!==null&&a.length<l;){if(n.nodeType===1){if(n.hasAttributes())for(let d of n.getAttributeNames())if(d.endsWith(Ae)){let p=c[o++],m=n.getAttribute(d).split(g),H=/([.?@])?(.*)/.exec(p);a.push({type:1,index:r,name:H[2],strings:m,ctor:H[1]==="."?Q:H[1]==="?"?Y:H[1]==="@"?ee:S}),n.removeAttribute(d)}else d.startsWith(g)&&(a.push({type:6,index:r}),n.removeAttribute(d));if(Se.test(n.tagName)){let d=n.textContent.split(g),p=d.length-1;if(p>0){n.textContent=U?U.emptyScript:"";for(let m=0;m<p;m++)n.append(d[m],P()),y.nextNode(),a.push({type:2,index:++r});n.append(d[p],P())}}}else if(n.nodeType===8)if(n.data===Ee)a.push({type:2,index:r});else{let d=-1;for(;(d=n.data.indexOf(g,d+1))!==-1;)a.push({type:7,index:r}),d+=g.length-1}r++}}static createElement(e,t){let s=b.createElement("template");return s.innerHTML=e,s}};function E(i,e,t=i,s){if(e===_)return e;let n=s!==void 0?t._$Co?.[s]:t._$Cl,r=T(e)?void 0:e._$litDirective$;return n?.constructor!==r&&(n?._$AO?.(!1),r===void 0?n=void 0:(n=new r(i),n._$AT(i,t,s)),s!==void 0?(t._$Co??=[])[s]=n:t._$Cl=n),n!==void 0&&(e=E(i,n._$AS(i,e.values),n,s)),e}var Z=class{constructor(e,t){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=t}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:t},parts:s}=this._$AD,n=(e?.creationScope??b).importNode(t,!0);y.currentNode=n;let r=y.nextNode(),o=0,l=0,a=s[0];for(;a!==void 0;){if(o===a.index){let h;a.type===2?h=new R(r,r.nextSibling,this,e):a.type===1?h=new a.ctor(r,a.name,a.strings,this,e):a.type===6&&(h=new te(r,this,e)),this._$AV.push(h),a=s[++l]}o!==a?.index&&(r=y.nextNode(),o++)}return y.currentNode=b,n}p(e){let t=0;for(let s of this._$AV)s!==void 0&&(s.strings!==void 0?(s._$AI(e,s,t),t+=s.strings.length-2):s._$AI(e[t])),t++}},R=class i{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,t,s,n){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=t,this._$AM=s,this.options=n,this._$Cv=n?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,t=this._$AM;return t!==void 0&&e?.nodeType===11&&(e=t.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,t=this){e=E(this,e,t),T(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==_&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):Ve(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&T(this._$AH)?this._$AA.nextSibling.data=e:this.T(b.createTextNode(e)),this._$AH=e}$(e){let{values:t,_$litType$:s}=e,n=typeof s=="number"?this._$AC(e):(s.el===void 0&&(s.el=L.createElement(we(s.h,s.h[0]),this.options)),s);if(this._$AH?._$AD===n)this._$AH.p(t);else{let r=new Z(n,this),o=r.u(this.options);r.p(t),this.T(o),this._$AH=r}}_$AC(e){let t=_e.get(e.strings);return t===void 0&&_e.set(e.strings,t=new L(e)),t}k(e){ie(this._$AH)||(this._$AH=[],this._$AR());let t=this._$AH,s,n=0;for(let r of e)n===t.length?t.push(s=new i(this.O(P()),this.O(P()),this,this.options)):s=t[n],s._$AI(r),n++;n<t.length&&(this._$AR(s&&s._$AB.nextSibling,n),t.length=n)}_$AR(e=this._$AA.nextSibling,t){for(this._$AP?.(!1,!0,t);e!==this._$AB;){let s=me(e).nextSibling;me(e).remove(),e=s}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},S=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,t,s,n,r){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=t,this._$AM=n,this.options=r,s.length>2||s[0]!==""||s[1]!==""?(this._$AH=Array(s.length-1).fill(new String),this.strings=s):this._$AH=u}_$AI(e,t=this,s,n){let r=this.strings,o=!1;if(r===void 0)e=E(this,e,t,0),o=!T(e)||e!==this._$AH&&e!==_,o&&(this._$AH=e);else{let l=e,a,h;for(e=r[0],a=0;a<r.length-1;a++)h=E(this,l[s+a],t,a),h===_&&(h=this._$AH[a]),o||=!T(h)||h!==this._$AH[a],h===u?e=u:e!==u&&(e+=(h??"")+r[a+1]),this._$AH[a]=h}o&&!n&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},Q=class extends S{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},Y=class extends S{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},ee=class extends S{constructor(e,t,s,n,r){super(e,t,s,n,r),this.type=5}_$AI(e,t=this){if((e=E(this,e,t,0)??u)===_)return;let s=this._$AH,n=e===u&&s!==u||e.capture!==s.capture||e.once!==s.once||e.passive!==s.passive,r=e!==u&&(s===u||n);n&&this.element.removeEventListener(this.name,this,s),r&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},te=class{constructor(e,t,s){this.element=e,this.type=6,this._$AN=void 0,this._$AM=t,this.options=s}get _$AU(){return this._$AM._$AU}_$AI(e){E(this,e)}};var Fe=se.litHtmlPolyfillSupport;Fe?.(L,R),(se.litHtmlVersions??=[]).push("3.3.3");var ke=(i,e,t)=>{let s=t?.renderBefore??e,n=s._$litPart$;if(n===void 0){let r=t?.renderBefore??null;s._$litPart$=n=new R(e.insertBefore(P(),r),r,void 0,t??{})}return n._$AI(i),n};var re=globalThis,$=class extends f{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let t=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=ke(t,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return _}};$._$litElement$=!0,$.finalized=!0,re.litElementHydrateSupport?.({LitElement:$});var Ge=re.litElementPolyfillSupport;Ge?.({LitElement:$});(re.litElementVersions??=[]).push("4.2.2");var D=class{constructor(e){this.send=e;this.revision=0}put(e){this.unsent=e,this.go()}arrived(e){this.outstanding!==void 0&&e>=this.outstanding&&(this.outstanding=void 0,this.sent=void 0,this.go())}again(){this.outstanding!==void 0&&(this.outstanding=void 0,this.unsent??=this.sent,this.go())}get isSettled(){return this.outstanding===void 0&&this.unsent===void 0}go(){if(this.outstanding===void 0&&this.unsent!==void 0){let e=this.unsent;this.unsent=void 0,this.sent=e,this.outstanding=++this.revision,this.send(e,this.outstanding)}}};var oe=["right","left"],Je=[500,1e3,2e3,3e3,4e3,6e3,8e3],B=-10,z=120,A=5,xe=6,K=oe.flatMap(i=>[...Je.map(e=>({ear:i,hertz:e,isRepeat:!1})),{ear:i,hertz:1e3,isRepeat:!0}]),I=K.flatMap((i,e)=>i.isRepeat?[]:[e]);function j(i){let e=i.trim().toUpperCase();switch(e){case"":return{kind:"empty"};case"NR":return{kind:"no-response"};case"DNT":return{kind:"not-tested",could:!0};case"CNT":return{kind:"not-tested",could:!1}}let t=e.startsWith(">"),s=W(t?e.slice(1):e);return s===void 0?{kind:"wrong"}:t?{kind:"no-response",limit:s}:{kind:"level",decibels:s}}function W(i){let e=/^-?\d{1,3}$/.test(i)?Number(i):NaN;return e>=B&&e<=z?e+0:void 0}function V(i){return j(i).kind!=="wrong"?"":/^-?\d+$/.test(i.trim())?`Outside ${B} to ${z} dB HL.`:`Whole dB HL from ${B} to ${z}.`}function Ce(i){let e=j(i);return e.kind==="level"&&e.decibels%A!==0?`Off the ${A} dB step.`:""}function Pe(i,e){let t=j(i),s=t.kind==="level"?t.decibels:t.kind==="no-response"?t.limit:void 0;if(s===void 0)return t.kind==="wrong"?i:"0";let n=e>0?Math.floor(s/A)+1:Math.ceil(s/A)-1;return String(Math.min(z,Math.max(B,n*A)))}function Te(i,e){switch(i.toLowerCase()){case"n":return W(e.trim())===void 0?void 0:`>${Number(e)}`;case"c":return"CNT";case"d":return"DNT";default:return}}function Le(i){let e=j(i).kind;return e==="no-response"||e==="not-tested"}function Re(i,e){return e>0?I.find(t=>t>i):I.findLast(t=>t<i)}function He(i){return I.find(e=>(i[e]??"").trim()==="")??I[0]}function Ne(i){let e=i.findIndex(t=>V(t)!=="");return e<0?void 0:e}function Oe(i){let e=i.ear==="right"?"Right ear":"Left ear";return i.isRepeat?`${e}, second reading at ${i.hertz} Hz`:`${e}, ${i.hertz} Hz`}var Xe=8e3,de=class extends ${constructor(){super();this.sending=new D((t,s)=>this.hand(t,s));this.onPageKey=t=>{let s=document.querySelector("vaadin-dialog[opened]")!==null;t.key==="Enter"&&t.ctrlKey&&!t.altKey&&!t.repeat&&!s&&(t.preventDefault(),t.stopPropagation(),this.sign())};this.onLeavingPage=t=>{this.lost&&t.preventDefault()};this.onOnline=()=>this.sendAgain();this.draft=0,this.arrived=0,this.values=K.map(()=>""),this.limit="",this.lost=!1,this.limitAsked=!1}static{this.styles=F`
    :host {
      display: block;
    }

    .ears {
      display: flex;
      flex-wrap: wrap;
      gap: 0.5rem 1.5rem;
    }

    fieldset {
      border: 0;
      margin: 0;
      inline-size: 16.4rem;
      padding: 0;
    }

    legend {
      font-weight: 600;
      padding: 0;
    }

    legend.right {
      color: var(--tr-ear-right, #b00020);
    }

    legend.left {
      color: var(--tr-ear-left, #0b4fb3);
    }

    /* The line of words has its room whether there are any or not, so that nothing moves while typing. */
    .line {
      align-items: center;
      column-gap: 0.6rem;
      display: grid;
      grid-template-columns: 5.1rem 4.6rem minmax(5.2rem, 1fr);
      grid-template-rows: 2rem minmax(1.05rem, auto);
    }

    .line.repeat {
      border-block-start: 1px solid var(--tr-rule, #ddd);
      padding-block-start: 0.3rem;
    }

    label,
    .before {
      font-variant-numeric: tabular-nums;
      line-height: 1.15;
    }

    .before {
      color: var(--tr-ink-soft, #555);
      font-size: 0.8125rem;
    }

    .before span {
      display: block;
    }

    .words {
      color: var(--tr-ink-soft, #555);
      font-size: 0.8125rem;
      grid-column: 1 / -1;
      line-height: 1.1;
    }

    .words.wrong {
      color: var(--tr-warm, #8f4a00);
      font-weight: 600;
    }

    input {
      background: var(--tr-sheet, canvas);
      border: 1px solid var(--tr-rule-strong, #888);
      border-radius: var(--tr-radius, 3px);
      box-sizing: border-box;
      color: inherit;
      font: inherit;
      font-variant-numeric: tabular-nums;
      inline-size: 100%;
      padding: 0.2rem 0.4rem;
      text-align: end;
    }

    input:focus-visible {
      box-shadow: var(--tr-focus, 0 0 0 2px canvas, 0 0 0 4px currentcolor);
      outline: 2px solid transparent;
    }

    input[aria-invalid='true'] {
      border: 2px solid var(--tr-warm, #8f4a00);
    }

    .limit {
      align-items: center;
      column-gap: 0.6rem;
      display: grid;
      grid-template-columns: auto 4.6rem;
      grid-template-rows: auto minmax(1.15rem, auto);
      justify-content: start;
      margin-block-start: 0.4rem;
    }

    .help,
    .kept {
      color: var(--tr-ink-soft, #555);
      font-size: 0.8125rem;
      margin: 0.4rem 0 0;
      max-inline-size: 44rem;
    }

    .kept {
      min-block-size: 1.4em;
    }

    .kept.lost {
      color: var(--tr-warm, #8f4a00);
      font-weight: 600;
    }

    kbd {
      border: 1px solid var(--tr-rule-strong, #888);
      border-radius: 3px;
      font: inherit;
      padding: 0 0.25em;
    }

    @media print {
      .help,
      .kept,
      .limit {
        display: none;
      }
    }
  `}static{this.properties={draft:{type:Number},start:{attribute:!1},compared:{attribute:!1},arrived:{type:Number},values:{state:!0},limit:{state:!0},current:{state:!0},lost:{state:!0},limitAsked:{state:!0}}}connectedCallback(){super.connectedCallback(),document.addEventListener("keydown",this.onPageKey,!0),window.addEventListener("beforeunload",this.onLeavingPage),window.addEventListener("online",this.onOnline)}disconnectedCallback(){super.disconnectedCallback(),document.removeEventListener("keydown",this.onPageKey,!0),window.removeEventListener("beforeunload",this.onLeavingPage),window.removeEventListener("online",this.onOnline),clearTimeout(this.timer),sessionStorage.removeItem(this.unsentKey)}focusFirstWrong(){let t=Ne(this.values);t!==void 0&&(this.refused=t,this.focusOn(t))}willUpdate(t){if(t.has("start")&&this.start){let s=this.unsent();this.values=(s??this.start).values,this.limit=(s??this.start).limit,s&&this.put()}t.has("arrived")&&(this.sending.arrived(this.arrived),this.sending.isSettled&&(clearTimeout(this.timer),sessionStorage.removeItem(this.unsentKey),this.lost=!1))}unsent(){let t=sessionStorage.getItem(this.unsentKey);return t===null?void 0:JSON.parse(t)}get unsentKey(){return`threshold-entry-${this.draft}`}updated(t){t.has("start")&&this.start&&this.focusOn(He(this.values))}render(){return w`
      <div class="ears" @keydown=${this.onKey}>
        ${oe.map(t=>w`
            <fieldset>
              <legend class=${t}>${t==="right"?"Right ear":"Left ear"}, dB HL</legend>
              ${K.map((s,n)=>s.ear===t?this.line(s,n):"")}
            </fieldset>
          `)}
      </div>
      <slot></slot>
      <div class="limit">
        <label for="limit">Loudest tone of the instrument, dB HL</label>
        <input
          id="limit"
          autocomplete="off"
          maxlength="3"
          .value=${this.limit}
          aria-invalid=${this.limitAsked?"true":"false"}
          aria-describedby="limit-words"
          @input=${this.onLimit}
        />
        <span id="limit-words" class="words ${this.limitAsked?"wrong":""}"
          >${this.limitAsked?"Give the level that no response was found at, -10 to 120 dB HL.":""}</span
        >
      </div>
      <p class="help" id="help">
        <kbd>Enter</kbd> moves on and <kbd>Shift Enter</kbd> back, the arrow keys step ${A} dB, <kbd>n</kbd> is no
        response at the loudest tone, <kbd>c</kbd> could not be tested, <kbd>d</kbd> was not tested,
        <kbd>Ctrl Enter</kbd> signs.
      </p>
      <p class="kept ${this.lost?"lost":""}" role="status">
        ${this.lost?"What you typed last has not reached the register. It stays here and is sent again; keep this page open.":""}
      </p>
    `}line(t,s){let n=this.values[s]??"",r=this.current===s&&this.refused!==s?"":V(n),o=this.compared?.[s];return w`
      <div class="line ${t.isRepeat?"repeat":""}">
        <label for="t${s}">${t.isRepeat?"1000 again":t.hertz}</label>
        <input
          id="t${s}"
          data-index=${s}
          aria-label=${`${Oe(t)}, dB HL`}
          aria-describedby=${`w${s} b${s}`}
          aria-invalid=${r?"true":"false"}
          autocomplete="off"
          spellcheck="false"
          maxlength=${xe}
          .value=${n}
          @input=${this.onInput}
          @focus=${this.onFocus}
          @blur=${this.onBlur}
        />
        <span class="before" id="b${s}"
          >${o?.last?w`<span>last ${o.last}</span>`:""}${o?.baseline?w`<span>baseline ${o.baseline}</span>`:""}</span
        >
        <span class="words ${r?"wrong":""}" id="w${s}">${r||Ce(n)}</span>
      </div>
    `}onKey(t){let s=ae(t.composedPath()[0]);if(s===void 0||t.altKey||t.ctrlKey||t.metaKey)return;let n=this.values[s]??"",r=Te(t.key,this.limit);t.key==="Enter"?(t.preventDefault(),t.repeat||this.move(s,t.shiftKey?-1:1)):t.key==="ArrowUp"||t.key==="ArrowDown"?(t.preventDefault(),this.set(s,Pe(n,t.key==="ArrowUp"?1:-1))):t.key.toLowerCase()==="n"&&r===void 0?(t.preventDefault(),this.limitAsked=!0):r!==void 0?(t.preventDefault(),this.set(s,r)):(t.key==="Backspace"||t.key==="Delete"||/^[-\d]$/.test(t.key))&&Le(n)&&(t.preventDefault(),this.set(s,t.key.length===1?t.key:""))}move(t,s){if(V(this.values[t]??"")){this.refused=t,this.requestUpdate(),this.field(t)?.select();return}let n=Re(t,s);n!==void 0?this.focusOn(n):s>0&&this.dispatchEvent(new CustomEvent("thresholds-done",{bubbles:!0,composed:!0}))}onInput(t){let s=ae(t.target);s!==void 0&&this.set(s,t.target.value)}onLimit(t){this.limit=t.target.value,this.limitAsked=this.limit.trim()!==""&&W(this.limit.trim())===void 0,this.put()}onFocus(t){this.current=ae(t.target),t.target.select()}onBlur(){this.current=void 0,this.refused=void 0}set(t,s){this.refused===t&&(this.refused=void 0),this.values=this.values.map((n,r)=>r===t?s:n),this.put()}focusOn(t){this.updateComplete.then(()=>this.field(t)?.focus())}field(t){return this.renderRoot.querySelector(`#t${t}`)}put(){let t={values:this.values,limit:this.limit};sessionStorage.setItem(this.unsentKey,JSON.stringify(t)),this.sending.put(t)}hand(t,s){clearTimeout(this.timer),this.timer=setTimeout(()=>this.sendAgain(),Xe),this.dispatchEvent(new CustomEvent("thresholds-typed",{detail:{revision:s,...t}}))}sendAgain(){this.sending.isSettled||(this.lost=!0,this.sending.again())}sign(){let t=document.activeElement;t instanceof HTMLElement&&t!==this&&t.blur(),this.dispatchEvent(new CustomEvent("test-sign",{detail:{revision:0,values:this.values,limit:this.limit}}))}};function ae(i){let e=i instanceof HTMLElement?i.dataset.index:void 0;return e===void 0?void 0:Number(e)}customElements.define("threshold-entry",de);export{de as ThresholdEntry};
/*! Bundled license information:

@lit/reactive-element/css-tag.js:
  (**
   * @license
   * Copyright 2019 Google LLC
   * SPDX-License-Identifier: BSD-3-Clause
   *)

@lit/reactive-element/reactive-element.js:
lit-html/lit-html.js:
lit-element/lit-element.js:
  (**
   * @license
   * Copyright 2017 Google LLC
   * SPDX-License-Identifier: BSD-3-Clause
   *)

lit-html/is-server.js:
  (**
   * @license
   * Copyright 2022 Google LLC
   * SPDX-License-Identifier: BSD-3-Clause
   *)
*/
